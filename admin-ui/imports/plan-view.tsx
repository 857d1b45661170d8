import { Alert, Box, Button } from '@mui/material';
import { useState } from 'react';
import { Tag, type Mood } from '../fields/tag.tsx';
import { Rows } from '../lists/rows.tsx';
import { Figures } from '../show/figures.tsx';
import { Section } from '../show/section.tsx';
import { numberText } from '../words/count.ts';
import type { ImportPlan, ImportRow } from './types.ts';

const WORDS: Record<ImportRow['action'], [once: string, done: string, mood: Mood]> = {
  create: ['To add', 'Added', 'good'],
  change: ['To change', 'Changed', 'care'],
  move: ['To move', 'Moved', 'care'],
  drop: ['To drop', 'Dropped', 'care'],
  same: ['As it is', 'As it was', 'plain'],
  refuse: ['Refused', 'Refused', 'bad'],
};
const ORDER = Object.keys(WORDS) as ImportRow['action'][];

interface Props {
  plan: ImportPlan;
  working: boolean;
  onConfirm: () => Promise<Record<string, unknown> | undefined>;
}

/** What the file would do, row by row, before anything is written. */
export function PlanView({ plan, working, onConfirm }: Props) {
  const [failed, setFailed] = useState<string | null>(null);
  const writes = ORDER.filter((action) => action !== 'same' && action !== 'refuse').reduce((sum, action) => sum + (plan.summary[action] ?? 0), 0);
  const confirm = async () => {
    const errors = (await onConfirm()) as { root?: { serverError?: string } } | undefined;
    setFailed(errors ? (errors.root?.serverError ?? 'The file could not be written. Read it again.') : null);
  };
  return (
    <Section title={plan.done ? 'What was done' : 'What would happen'}>
      <Figures figures={ORDER.map((action) => ({ label: WORDS[action][plan.done ? 1 : 0], value: numberText(plan.summary[action] ?? 0) }))} />
      {plan.ignoredHeadings.length > 0 && <Alert severity="info" icon={false} sx={{ mb: 1 }}>These columns mean nothing here and are left out: {plan.ignoredHeadings.join(', ')}.</Alert>}
      {plan.done && <Alert severity="success" icon={false} role="status">The file is written.</Alert>}
      {failed && <Alert severity="error" role="alert">{failed}</Alert>}
      {!plan.done && writes === 0 && <Alert severity="info" icon={false}>There is nothing to write. {plan.summary.refuse > 0 ? 'Mend the refused rows in the file and read it again.' : 'Everything in the file is here already.'}</Alert>}
      {!plan.done && writes > 0 && (
        <Box sx={{ mb: 2 }}>
          {plan.summary.refuse > 0 && <p>The refused rows are left out; the others are written.</p>}
          <Button variant="contained" disabled={working} onClick={() => void confirm()}>{working ? 'Writing…' : 'Write it'}</Button>
        </Box>
      )}
      <Rows<ImportRow>
        label="Row by row"
        rows={plan.rows}
        keyOf={(row, place) => `${row.line} ${place}`}
        columns={[
          { label: 'Row', show: (row) => (row.line === null ? 'Not in the file' : `Row ${row.line}`) },
          { label: 'What', show: (row) => <Tag mood={WORDS[row.action]?.[2] ?? 'plain'}>{WORDS[row.action]?.[plan.done ? 1 : 0] ?? row.action}</Tag> },
          { label: 'Which and why', show: (row) => row.sentence },
        ]}
      />
    </Section>
  );
}
