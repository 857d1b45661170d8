import { Alert, Box, Typography } from '@mui/material';
import { useQuery } from '@tanstack/react-query';
import { ask } from '../api/http.ts';
import { Go } from '../fields/go.tsx';
import { dayText } from '../format/day.ts';
import { moneyText } from '../format/money.ts';
import { sentenceText } from '../format/sentence.ts';
import { Reading } from '../show/reading.tsx';
import { count, numberText } from '../words/count.ts';
import { lineInWords, nightInWords } from './move-words.ts';
import type { MovedContract, MovePreview, MovePreviewForm } from './types.ts';

/** Asks what a move would do; nothing is asked while the form is not whole. */
function useMovePreview(gameId: string, form: MovePreviewForm | null) {
  return useQuery<MovePreview, Error>({
    queryKey: ['move-preview', gameId, form],
    queryFn: () => ask<MovePreview>(`/games/${gameId}/move-previews`, { method: 'POST', body: form }),
    enabled: form !== null,
    retry: false,
    gcTime: 0,
    staleTime: 0,
  });
}

function Contract({ contract, preview }: { contract: MovedContract; preview: MovePreview }) {
  const { memos, creditedCents } = contract;
  return (
    <Box component="li" sx={{ mb: 1.5 }}>
      <Typography component="p" sx={{ fontWeight: 700 }}>
        <Go resource="sponsors" id={contract.sponsorId}>{contract.sponsorName}</Go>
        {': '}
        <Go resource="contracts" id={contract.contractId}>{contract.title}</Go>
      </Typography>
      {contract.lines.map((line) => <Typography key={line.lineId} component="p">{lineInWords(line, preview)}</Typography>)}
      {memos.map((memo) => (
        <Typography key={`${memo.grossCents} ${memo.invoiceNumbers.join()}`} component="p">
          {contract.sellerName} writes a credit memo of {moneyText(memo.grossCents)}{memo.taxCents > 0 ? `, ${moneyText(memo.taxCents)} of it tax` : ''}{memo.invoiceNumbers.length > 0 ? `, on invoice ${memo.invoiceNumbers.join(', ')}` : ''}.
        </Typography>
      ))}
      {creditedCents > 0 && memos.length === 0 && <Typography component="p">Nothing of it is billed yet, so no credit memo is written: there is {moneyText(-contract.toBillChangeCents)} less to bill.</Typography>}
    </Box>
  );
}

function Season({ preview: { shortfall } }: { preview: MovePreview }) {
  const { readsBefore, readsAfter, promises, because, isProven } = shortfall;
  if (readsAfter <= readsBefore) {
    return <Typography component="p">{readsAfter === 0 ? 'Afterwards every read of the season still finds a place.' : `Afterwards no more reads of the season are without a place than now: ${numberText(readsAfter)}.`}</Typography>;
  }
  return (
    <Alert severity="warning" icon={false}>
      Afterwards {count(readsAfter, 'read')} of the season {readsAfter === 1 ? 'finds' : 'find'} no place{readsBefore > 0 ? `, ${numberText(readsBefore)} now` : ''}{isProven ? '' : ' as far as could be worked out in time'}.
      {promises.map((promise) => <Box key={promise.promiseId}>{promise.sponsorName}, {promise.readKindName.toLowerCase()}: {numberText(promise.readsAfter)} without a place, {numberText(promise.readsBefore)} now.</Box>)}
      {because.map((sentence) => <Box key={sentence}>{sentenceText(sentence)}</Box>)}
    </Alert>
  );
}

function Told({ preview }: { preview: MovePreview }) {
  const nights = preview.nights.map((night) => nightInWords(night)).filter(Boolean);
  return (
    <>
      {preview.before.playedOn !== preview.after.playedOn && <Typography component="p" sx={{ mb: 1 }}>From {dayText(preview.before.playedOn, 'long')} to {dayText(preview.after.playedOn, 'long')}.</Typography>}
      {preview.contracts.length === 0 ? (
        <Typography component="p" sx={{ mb: 1 }}>No contract is touched: no read is owed for this game, and none is planned into it.</Typography>
      ) : (
        <Box component="ul" sx={{ listStyle: 'none', p: 0, m: 0 }}>{preview.contracts.map((contract) => <Contract key={contract.contractId} contract={contract} preview={preview} />)}</Box>
      )}
      {nights.map((sentence) => <Typography key={sentence} component="p">{sentence}</Typography>)}
      <Box sx={{ mt: 1 }}><Season preview={preview} /></Box>
    </>
  );
}

/** What a move does to every contract, in words, before it is confirmed. */
export function MovePreviewSheet({ gameId, form }: { gameId: string; form: MovePreviewForm | null }) {
  const asked = useMovePreview(gameId, form);
  if (form === null) return null;
  return (
    <Box component="section" aria-label="What it does" sx={{ border: 1, borderColor: 'divider', borderRadius: 1, p: 1.5, mb: 2 }}>
      <Typography variant="h3" component="h3" sx={{ mb: 1 }}>What it does</Typography>
      <Reading of={asked}>{(preview) => <Told preview={preview} />}</Reading>
    </Box>
  );
}
