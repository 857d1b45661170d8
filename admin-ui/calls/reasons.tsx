import { Box } from '@mui/material';
import { Go } from '../fields/go.tsx';
import { Tag } from '../fields/tag.tsx';
import { dayText } from '../format/day.ts';
import type { CallView } from './types.ts';

type Reason = CallView['reasons'][number];

function Words({ reason, isOverdue }: { reason: Reason; isOverdue: boolean }) {
  if (reason.kind === 'offerLapses') return <>Offer lapses {dayText(reason.on, 'weekday')}: <Go resource="offers" id={reason.offerId}>{reason.title}</Go></>;
  if (reason.kind === 'contractEnds') return <>Ends {dayText(reason.on)}: <Go resource="contracts" id={reason.contractId}>{reason.title}</Go></>;
  const text = reason.text ?? 'Call';
  if (reason.on === null) return <>{text}, no day named</>;
  return isOverdue ? <><Tag mood="care">{text}</Tag>, was due {dayText(reason.on)}</> : <>{text}, {dayText(reason.on, 'weekday')}</>;
}

/** Why somebody is to be called, the soonest reason first. */
export const Reasons = ({ call, today }: { call: CallView; today: string }) => (
  <>
    {call.reasons.map((reason) => (
      <Box key={`${reason.kind} ${'contractId' in reason ? reason.contractId : 'offerId' in reason ? reason.offerId : ''}`}>
        <Words reason={reason} isOverdue={reason.on !== null && reason.on < today} />
      </Box>
    ))}
  </>
);
