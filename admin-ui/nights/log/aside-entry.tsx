import { Box } from '@mui/material';
import type { AsideView } from '../../../server/night/log/aside.dto.ts';
import { Tag } from '../../fields/tag.tsx';
import { CommandButton } from '../../forms/command-button.tsx';
import { WordsInput } from '../../inputs/words-input.tsx';
import type { Night } from '../types.ts';

const SETTLED = { takenIn: 'Taken in', setAside: 'Set aside for good' } as const;

/** One entry that was kept aside: what it says, what differs, and the two ways to settle it. */
export function AsideEntry({ night, aside, onDone }: { night: Night; aside: AsideView; onDone: () => void }) {
  const path = `/nights/${night.id}/log/aside/${aside.id}/settle`;
  const isLate = night.state === 'signedOff';
  const reason = <WordsInput source="reason" label="Why" longest={300} required={isLate} helperText={isLate ? 'The night is signed off: this is an amendment' : 'Stands in the log beside it'} />;
  return (
    <Box sx={{ py: 1.25, borderTop: 1, borderColor: 'divider' }}>
      <Box><strong>Kept aside: {aside.sentence}</strong></Box>
      {aside.inLog && <Box>Entry {aside.inLog.number} in the log: {aside.inLog.sentence}</Box>}
      <Box component="ul" sx={{ my: 0.5 }}>{aside.differences.map((line) => <li key={line}>{line}</li>)}</Box>
      {aside.state !== 'waiting' ? (
        <Tag mood="plain">{SETTLED[aside.state]} as entry {aside.settledNumber}</Tag>
      ) : (
        <Box sx={{ display: 'flex', gap: 1, flexWrap: 'wrap' }}>
          <CommandButton label="Take it in" title="Take this entry in?" explains="It goes into the log as an entry of its own, beside the one that is there. Take that one back if it is wrong." path={path} body={(values) => ({ answer: 'takeIn', ...values })} success="The entry is in the log." onDone={onDone}>{reason}</CommandButton>
          <CommandButton label="Set it aside for good" title="Set this entry aside for good?" explains="It is not taken in. A note in the log says so." path={path} body={(values) => ({ answer: 'setAside', ...values })} success="The entry is set aside." onDone={onDone}>{reason}</CommandButton>
        </Box>
      )}
    </Box>
  );
}
