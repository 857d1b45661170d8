import { Typography } from '@mui/material';
import { iMay } from '../../session/rights.ts';
import { Section } from '../../show/section.tsx';
import type { Night } from '../types.ts';
import { LinksOfTable } from './links-of-table.tsx';
import { OpenDeskButton } from './open-desk-button.tsx';

/** The scorer's table of a night: its page, and who else gets in. */
export function TableSheet({ night }: { night: Night }) {
  return (
    <>
      {iMay('log', 'show') && (
        <Section title="At the scorer’s table" actions={<OpenDeskButton nightId={night.id} title={night.title} />}>
          <Typography sx={{ maxWidth: '70ch' }}>
            The desk shows each cue, keeps the log and works without a network. Open it on the phone or laptop that goes to the table while there is a signal: from then on the
            night is stored there, and nobody is signed out in the middle of a game.
          </Typography>
        </Section>
      )}
      {iMay('links', 'list') && <LinksOfTable night={night} />}
    </>
  );
}
