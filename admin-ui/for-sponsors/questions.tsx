import { Box, Typography } from '@mui/material';
import type { Question } from './types.ts';
import { useWritten } from './written.tsx';

const OUTCOMES: Record<NonNullable<Question['outcome']>, string> = {
  stands: 'The read counts as it was.', takenBack: 'The read does not count any more.', added: 'The read was added.', makegood: 'The school makes it good.',
};

/** What the sponsor asked about its reads, and what the school answered. */
export function Questions({ questions }: { questions: readonly Question[] }) {
  const { night, dayOf } = useWritten();
  return (
    <>
      {questions.map((question) => (
        <Box component="article" key={question.id} sx={{ borderTop: 1, borderColor: 'divider', py: 1.5, breakInside: 'avoid' }}>
          <Typography sx={{ fontWeight: 600 }}>{[question.readKindName, night(question.heldOn), question.gameLabel, question.windowName].filter(Boolean).join(' · ')}</Typography>
          <Typography sx={{ overflowWrap: 'anywhere' }}>{question.askedByName} asked on {dayOf(question.askedAt)}: “{question.what}”</Typography>
          {question.outcome === null
            ? <Typography sx={{ color: 'text.secondary' }}>The school has not answered yet.</Typography>
            : <Typography sx={{ overflowWrap: 'anywhere' }}>The school answered{question.answeredAt ? ` on ${dayOf(question.answeredAt)}` : ''}: “{question.answer}” {OUTCOMES[question.outcome]}</Typography>}
        </Box>
      ))}
    </>
  );
}
