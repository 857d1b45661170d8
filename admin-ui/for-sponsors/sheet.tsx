import { Alert, Paper, Typography } from '@mui/material';
import { useQueryClient } from '@tanstack/react-query';
import { useEffect, useMemo, useState } from 'react';
import { useServer } from '../api/use-server.ts';
import { ApprovedWords } from './approved-words.tsx';
import { Contacts } from './contacts.tsx';
import { Contracts } from './contracts.tsx';
import { Head } from './head.tsx';
import { rememberSchool } from './known-school.ts';
import { Money } from './money.tsx';
import { Nights } from './nights.tsx';
import { Offers } from './offers.tsx';
import { OwnStatements } from './own-statements.tsx';
import { Part } from './part.tsx';
import { AnsweredProposals, OpenProposal } from './proposals.tsx';
import { Questions } from './questions.tsx';
import { Shut } from './shut.tsx';
import { PageHere } from './the-page.tsx';
import type { ProposalsOnPage, QuestionsOnPage, SponsorPage } from './types.ts';
import { WaitingWords } from './waiting-words.tsx';
import { WrittenAt, useWritten } from './written.tsx';

const PATH = '/sponsor-page';

/** Everything of one sponsor that can be read and answered here. */
export function SponsorSheet() {
  const page = useServer<SponsorPage>(PATH);
  const { data } = page;
  useEffect(() => {
    if (!data) return undefined;
    rememberSchool(data);
    // What the browser proposes as the name of a saved page.
    const before = document.title;
    document.title = `${data.sponsorName} at the games of ${data.departmentName}`;
    return () => void (document.title = before);
  }, [data]);
  if (page.error) return <Shut sentence={page.error.message} />;
  if (!data) return <Typography role="status">Reading…</Typography>;
  return <WrittenAt place={data}><Parts page={data} /></WrittenAt>;
}

const PARTS = {
  waiting: 'Waiting for you', reads: 'Promised and given', nights: 'Night by night', agreed: 'For what we missed', questions: 'Your questions', statements: 'Statements of performance',
  money: 'What it costs', offers: 'Offered to you', words: 'Your words', contact: 'Whom to call',
} as const;
type PartName = keyof typeof PARTS;

function Parts({ page }: { page: SponsorPage }) {
  const client = useQueryClient();
  const { dayOf } = useWritten();
  const [said, setSaid] = useState<string | null>(null);
  const proposals = useServer<ProposalsOnPage>(`${PATH}/proposals`).data?.proposals ?? [];
  const questions = useServer<QuestionsOnPage>(`${PATH}/questions`).data?.questions ?? [];
  const statements = useServer<{ data: unknown[] }>(`${PATH}/performance-statements`).data?.data ?? [];
  const here = useMemo(() => ({ page, say: setSaid }), [page]);
  const answered = (next: SponsorPage, sentence: string): void => {
    client.setQueryData(['server', PATH], next);
    setSaid(sentence);
  };
  const waiting = page.copies.flatMap((copy) => copy.waiting.map((words) => ({ copy, words })));
  const approved = page.copies.flatMap((copy) => copy.approved.map((words) => ({ copy, words })));
  const open = proposals.filter((proposal) => proposal.answer === null);
  const closed = proposals.filter((proposal) => proposal.answer !== null);
  const waits = waiting.length + open.length > 0;
  const shows: Record<PartName, boolean> = {
    waiting: true, reads: true, nights: page.contracts.length > 0, agreed: closed.length > 0, questions: questions.length > 0, statements: statements.length > 0,
    money: true, offers: page.offers.length > 0, words: approved.length > 0, contact: true,
  };
  const parts = (Object.keys(PARTS) as PartName[]).filter((id) => shows[id]).map((id) => ({ id, title: PARTS[id] }));
  return (
    <PageHere value={here}>
      <Head page={page} parts={parts} />
      <div role="status">{said && <Alert severity="success" sx={{ mb: 2, displayPrint: 'none' }}>{said}</Alert>}</div>
      <Part id="waiting" isOnPaper={false} title={waits ? PARTS.waiting : 'Nothing waits for you'} lead={waits ? undefined : 'When there are new words to read, or something to agree to, you find it here.'}>
        {open.map((proposal) => <OpenProposal key={proposal.id} proposal={proposal} />)}
        {waiting.map(({ copy, words }) => (
          <Paper key={words.id} component="article" variant="outlined" sx={{ p: { xs: 2, sm: 3 }, mb: 3 }}>
            <WaitingWords title={copy.title} kind={copy.readKindName} words={words} onAnswered={answered} />
          </Paper>
        ))}
      </Part>
      <Part id="reads" title={PARTS.reads}><Contracts contracts={page.contracts} today={page.today} /></Part>
      {shows.nights && <Nights id="nights" title={PARTS.nights} />}
      {shows.agreed && <Part id="agreed" title={PARTS.agreed}><AnsweredProposals proposals={closed} /></Part>}
      {shows.questions && <Part id="questions" title={PARTS.questions}><Questions questions={questions} /></Part>}
      <OwnStatements id="statements" />
      <Money id="money" title={PARTS.money} contracts={page.contracts} />
      {shows.offers && <Part id="offers" title={PARTS.offers}><Offers offers={page.offers} /></Part>}
      {shows.words && <Part id="words" title={PARTS.words} lead="Approved, and read at the games.">{approved.map(({ copy, words }) => <ApprovedWords key={words.id} title={copy.title} isStopped={copy.isStopped} words={words} />)}</Part>}
      <Part id="contact" title={PARTS.contact}>
        <Contacts contacts={page.contacts} />
        <Typography sx={{ color: 'text.secondary' }}>This page is yours alone. The link to it is good until {dayOf(page.linkEndsAt)}.</Typography>
      </Part>
    </PageHere>
  );
}
