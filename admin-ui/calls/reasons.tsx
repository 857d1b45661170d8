import { Box } from '@mui/material';
import { Go } from '../fields/go.tsx';
import { Tag } from '../fields/tag.tsx';
import { dayText } from '../format/day.ts';
import type { CallView } from './types.ts';

type Reason = CallView['reasons'][number];

const daysOf = (reason: Reason): string => (reason.on ? dayText(reason.on, 'weekday') : 'no day named');

function Words({ reason, isOverdue }: { reason: Reason; isOverdue: boolean }) {
  if (reason.kind === 'offerLapses') return <><Go resource="offers" id={reason.offerId}>{reason.title}</Go>: the offer lapses {daysOf(reason)}</>;
  if (reason.kind === 'contractEnds') return <><Go resource="contracts" id={reason.contractId}>{reason.title}</Go>: ends {dayText(reason.on)}, nothing follows yet</>;
  const text = reason.text ?? 'Call';
  return isOverdue ? <><Tag mood="care">{text}</Tag>, was due {daysOf(reason)}</> : <>{text}{reason.on ? `, ${daysOf(reason)}` : ', no day named'}</>;
}

/** Why somebody is to be called, the soonest reason first. */
export const Reasons = ({ call, today }: { call: CallView; today: string }) => (
  <>
    {call.reasons.map((reason) => (
      <Box key={`${reason.kind} ${reason.on}`}>
        <Words reason={reason} isOverdue={reason.on !== null && reason.on < today} />
      </Box>
    ))}
  </>
);
