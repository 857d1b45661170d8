import { Alert, Box, Button, Paper, Typography } from '@mui/material';
import { useEffect, useState } from 'react';
import { Form, ResourceContextProvider, Title, useGetList } from 'react-admin';
import { useWatch } from 'react-hook-form';
import { useNavigate } from 'react-router';
import { FormGrid } from '../forms/form-grid.tsx';
import { PickInput } from '../inputs/pick-input.tsx';
import { Waiting } from '../layout/waiting.tsx';
import { EmptyList } from '../lists/empty-list.tsx';
import type { Season } from '../seasons/types.ts';
import { iMay } from '../session/rights.ts';
import { Answer } from './answer.tsx';
import { AskedLinesFields } from './asked-line-fields.tsx';
import { offerOf, questionOf } from './question.ts';
import type { Question, QuestionValues } from './question.ts';
import { usePromiseCheck } from './use-promise-check.ts';

const PAUSE_MILLISECONDS = 500;

/** The question as it stands once nobody typed for half a second. */
function useQuestion(): Question | null {
  const text = JSON.stringify(questionOf(useWatch() as QuestionValues));
  const [settled, setSettled] = useState(text);
  useEffect(() => {
    const timer = setTimeout(() => setSettled(text), PAUSE_MILLISECONDS);
    return () => clearTimeout(timer);
  }, [text]);
  return JSON.parse(settled) as Question | null;
}

function MakeOffer({ question }: { question: Question }) {
  const navigate = useNavigate();
  if (!iMay('offers', 'create')) return null;
  return <Button variant="contained" sx={{ mt: 2 }} onClick={() => void navigate('/offers/create', { state: { record: offerOf(question) } })}>Make this an offer</Button>;
}

function AnswerBeside() {
  const question = useQuestion();
  const check = usePromiseCheck('/plan/promise-checks', question);
  return (
    <Paper component="section" aria-label="Answer" variant="outlined" sx={{ p: { xs: 2, sm: 3 }, minWidth: 0, position: { md: 'sticky' }, top: { md: 72 } }}>
      <Box role="status" aria-live="polite" aria-busy={check.isFetching}>
        {question === null && <EmptyList>Say the season and at least one line of reads. The answer comes as you fill them in; nothing is stored by asking.</EmptyList>}
        {question !== null && check.error && <Alert severity="error" icon={false}>{check.error.message}</Alert>}
        {question !== null && !check.error && (check.data ? <Answer check={check.data} /> : <Waiting what="Working out whether it fits" />)}
      </Box>
      {question !== null && check.data && !check.error && <MakeOffer question={question} />}
    </Paper>
  );
}

/** "Can we promise this?": asked before anything is offered, answered as the form is filled in. */
export function CanWePromisePage() {
  const { data: seasons, isPending } = useGetList<Season>('seasons', { pagination: { page: 1, perPage: 1 }, sort: { field: 'startsOn', order: 'DESC' } });
  if (isPending) return <><Title title="Can we promise this?" /><Waiting /></>;
  const seasonId = seasons?.[0]?.id;
  return (
    <>
      <Title title="Can we promise this?" />
      <Typography sx={{ color: 'text.secondary', mb: 2, maxWidth: '75ch' }}>
        Everything signed and every open offer that holds its places stays whole. A yes has a plan behind it; a no says the most that fits, and what is full.
      </Typography>
      <ResourceContextProvider value="can-we-promise">
      <Form defaultValues={{ ...(seasonId ? { seasonId } : {}), lines: [{ counting: 'perTerm', separation: 'window', priority: 2 }] }} record={{}}>
        <Box sx={{ display: 'grid', gap: 2, gridTemplateColumns: { xs: 'minmax(0, 1fr)', md: 'minmax(0, 6fr) minmax(0, 5fr)' }, alignItems: 'start' }}>
          <Paper component="section" aria-label="Question" variant="outlined" sx={{ p: { xs: 2, sm: 3 }, minWidth: 0 }}>
            <FormGrid>
              <PickInput source="seasonId" reference="seasons" label="Season" required />
              <PickInput source="sponsorId" reference="sponsors" label="Sponsor" helperText="Empty where nobody is named yet" />
              <Category />
            </FormGrid>
            <AskedLinesFields />
          </Paper>
          <AnswerBeside />
        </Box>
      </Form>
      </ResourceContextProvider>
    </>
  );
}

/** A sponsor brings its category along. */
function Category() {
  const sponsorId = useWatch({ name: 'sponsorId' }) as string | null | undefined;
  return sponsorId ? null : <PickInput source="categoryId" reference="sponsor-categories" label="Category" helperText="Whose competitors are kept apart" />;
}
