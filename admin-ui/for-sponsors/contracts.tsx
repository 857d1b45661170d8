import { Box, Button, Paper, Typography } from '@mui/material';
import { useState } from 'react';
import { Benefits } from './benefits.tsx';
import { Counts } from './counts.tsx';
import { HowFar } from './how-far.tsx';
import { usePrinting } from './printing.ts';
import { countsOf, lineSentence } from './read-words.ts';
import type { ContractOfSponsor, LineOfSponsor } from './types.ts';
import { many, useWritten } from './written.tsx';

/** What was promised and given under each contract; those of earlier seasons wait behind a button. */
export function Contracts({ contracts, today }: { contracts: readonly ContractOfSponsor[]; today: string }) {
  const [wantsEarlier, setWanted] = useState(false);
  const isPrinting = usePrinting();
  if (contracts.length === 0) return <Typography>There is no signed contract yet. Once there is one, its reads are counted here, night by night.</Typography>;
  const newestSeason = contracts[0]!.seasonId;
  const isNow = (one: ContractOfSponsor): boolean => one.endsOn >= today || one.seasonId === newestSeason;
  const [now, earlier] = [contracts.filter(isNow), contracts.filter((one) => !isNow(one))];
  const showsEarlier = wantsEarlier || isPrinting;
  return (
    <>
      {now.map((contract) => <ContractCard key={contract.contractId} contract={contract} />)}
      {earlier.length > 0 && (
        <Button variant="outlined" aria-expanded={showsEarlier} onClick={() => setWanted(!wantsEarlier)} sx={{ displayPrint: 'none', mb: 2 }}>
          {wantsEarlier ? 'Hide earlier seasons' : `Show earlier seasons (${many(earlier.length, 'contract')})`}
        </Button>
      )}
      {showsEarlier && earlier.map((contract) => <ContractCard key={contract.contractId} contract={contract} />)}
    </>
  );
}

const STATE_WORDS: Record<ContractOfSponsor['state'], string> = { draft: '', signed: '', ended: ' Ended early.', closed: ' Everything is settled.' };

function ContractCard({ contract }: { contract: ContractOfSponsor }) {
  const { day } = useWritten();
  const { title, number, seasonName, sellerName, startsOn, endsOn, state, lines, benefits, sum } = contract;
  return (
    <Paper component="article" variant="outlined" sx={{ p: { xs: 2, sm: 3 }, mb: 2, '@media print': { border: 0, p: 0 } }}>
      <Typography variant="h3" sx={{ overflowWrap: 'anywhere' }}>{title}</Typography>
      <Typography sx={{ color: 'text.secondary' }}>
        {seasonName}, {day(startsOn)} to {day(endsOn)}. {number ? `Contract ${number} with ` : 'With '}{sellerName}.{STATE_WORDS[state]}
      </Typography>
      {lines.length > 1 && <Counts counts={countsOf(sum)} />}
      {lines.map((line) => <Line key={line.commitmentId} line={line} />)}
      {sum.notConfirmed > 0 && <Typography sx={{ mt: 1.5 }}>{many(sum.notConfirmed, 'read')} heard at the table {sum.notConfirmed === 1 ? 'is' : 'are'} not confirmed by the school yet and {sum.notConfirmed === 1 ? 'counts' : 'count'} once the night is signed off.</Typography>}
      <Benefits benefits={benefits} />
    </Paper>
  );
}

function Line({ line }: { line: LineOfSponsor }) {
  return (
    <Box sx={{ mt: 2, pt: 2, borderTop: 1, borderColor: 'divider', breakInside: 'avoid' }}>
      <Typography component="h4" sx={{ fontWeight: 600, fontSize: '1.0625rem' }}>{line.readKindName}</Typography>
      <Typography>{lineSentence(line)}{line.planned > 0 ? ` ${many(line.planned, 'read')} planned for games to come.` : ''}</Typography>
      <HowFar reads={line} />
      {(line.promised + line.cameOver > 0 || line.extra > 0) && <Counts counts={countsOf(line)} />}
    </Box>
  );
}
