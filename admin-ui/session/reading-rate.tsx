import { Box, Button, Typography } from '@mui/material';
import { useSend } from '../api/command.ts';
import { useServer } from '../api/use-server.ts';
import { CALIBRATION_CARD, measuredRate } from '../../server/domain/packet/voice.ts';
import type { ReadingRateView } from '../../server/access/reading-rate.dto.ts';
import { Section } from '../show/section.tsx';
import { useStopWatch } from './stop-watch.ts';

/** Reading the card against a stop-watch; packets are then timed at the pace of whoever announces. */
export function ReadingRate() {
  const { data: answer } = useServer<ReadingRateView>('/me/reading-rate');
  const { send, sending } = useSend();
  const watch = useStopWatch();
  const keep = async (wordsPerMinute: number | null) => {
    const { errors } = await send('/me/reading-rate', { method: 'PUT', body: { wordsPerMinute } }, wordsPerMinute === null ? 'Your packets are timed at the department’s rate.' : `Your packets are timed at ${wordsPerMinute} words a minute.`);
    if (!errors) watch.clear();
  };
  if (!answer) return null;
  const { wordsPerMinute, usualWordsPerMinute } = answer;
  return (
    <Section title="How fast you read" lead={`Packets of the nights you announce are timed at ${wordsPerMinute === null ? `${usualWordsPerMinute} words a minute, as the department has it` : `your ${wordsPerMinute} words a minute`}. To measure, press start, read the card aloud as you would in the gym, and press stop.`}>
      <Typography component="blockquote" sx={{ m: 0, mb: 2, pl: 2, borderLeft: 3, borderColor: 'divider', fontSize: '1.25rem', lineHeight: 1.6, maxWidth: '60ch' }}>{CALIBRATION_CARD}</Typography>
      <Box sx={{ display: 'flex', gap: 1.5, flexWrap: 'wrap', alignItems: 'center' }}>
        {watch.state === 'done' ? (
          <Measured seconds={watch.seconds} sending={sending} onKeep={keep} onAgain={watch.start} />
        ) : (
          <Button variant={watch.state === 'running' ? 'contained' : 'outlined'} onClick={watch.state === 'running' ? watch.stop : watch.start} sx={{ minWidth: 96, minHeight: 44 }}>
            {watch.state === 'running' ? 'Stop' : 'Start'}
          </Button>
        )}
        {watch.state === 'running' && <Typography aria-hidden sx={{ fontVariantNumeric: 'tabular-nums' }}>{Math.floor(watch.seconds)} s</Typography>}
        {wordsPerMinute !== null && watch.state === 'ready' && <Button disabled={sending} onClick={() => void keep(null)} sx={{ minHeight: 44 }}>Use the department’s rate</Button>}
      </Box>
    </Section>
  );
}

interface MeasuredProps {
  seconds: number;
  sending: boolean;
  onKeep: (wordsPerMinute: number) => Promise<void>;
  onAgain: () => void;
}

function Measured({ seconds, sending, onKeep, onAgain }: MeasuredProps) {
  const rate = measuredRate(seconds);
  return (
    <>
      <Typography role="status">
        {rate === null ? `${seconds.toFixed(1)} seconds cannot be the whole card. Try again.` : `That is ${rate} words a minute (${seconds.toFixed(1)} seconds).`}
      </Typography>
      {rate !== null && <Button variant="contained" autoFocus disabled={sending} onClick={() => void onKeep(rate)} sx={{ minHeight: 44 }}>Keep it</Button>}
      <Button autoFocus={rate === null} onClick={onAgain} sx={{ minHeight: 44 }}>Again</Button>
    </>
  );
}
