import { Box } from '@mui/material';
import type { Seal } from '../audit/types.ts';
import { instantText } from '../format/instant.ts';
import { ListPage } from '../lists/list-page.tsx';
import { iMay } from '../session/rights.ts';
import { count } from '../words/count.ts';
import { SealButton } from './seal-button.tsx';

const inFours = (head: string): string => head.slice(0, 32).replace(/(.{4})/g, '$1 ').trim();

export const SealList = () => (
  <ListPage<Seal>
    title="Seals"
    lead={<p>A seal chains everything recorded since the last one. Write its mark on paper and nobody can change the past unseen.</p>}
    sort={{ field: 'number', order: 'DESC' }}
    actions={iMay('seals', 'create') && <SealButton />}
    empty={<>No seal yet. One is set by itself every night; press the button to set one now. {iMay('seals', 'create') && <Box sx={{ mt: 1 }}><SealButton /></Box>}</>}
    columns={[
      { label: 'Seal', show: (seal) => `Seal ${seal.number}` },
      { label: 'When', show: (seal) => instantText(seal.recordedAt) },
      { label: 'Covers', show: (seal) => count(seal.rowCount, 'row') },
      { label: 'Mark', show: (seal) => <Box component="span" sx={{ fontFamily: 'monospace', overflowWrap: 'anywhere' }}>{inFours(seal.head)}</Box> },
    ]}
  />
);
