import { Alert, Box, Button, Typography } from '@mui/material';
import { useMemo, useState } from 'react';
import { useServer } from '../api/use-server.ts';
import { Night } from './night.tsx';
import { Part } from './part.tsx';
import { usePrinting } from './printing.ts';
import type { NightOfSponsor, NightsOfSponsor } from './types.ts';
import { many, useWritten } from './written.tsx';

interface Month {
  /** "2026-12" */
  month: string;
  nights: NightOfSponsor[];
  given: number;
  planned: number;
}

const GIVEN: ReadonlySet<string> = new Set(['given', 'extra', 'makegood']);

/** So few nights need no folding. */
const FEW_NIGHTS = 8;

/** The latest month first, and in it the latest night. */
function monthsOf(nights: readonly NightOfSponsor[]): Month[] {
  const months = new Map<string, Month>();
  for (const night of [...nights].reverse()) {
    const month = night.heldOn.slice(0, 7);
    const known = months.get(month) ?? { month, nights: [], given: 0, planned: 0 };
    known.nights.push(night);
    known.given += night.reads.filter((read) => GIVEN.has(read.what)).length;
    known.planned += night.planned.reduce((sum, { count }) => sum + count, 0);
    months.set(month, known);
  }
  return [...months.values()];
}

/** The month to look at first: of the last night on which something was read, else of the next one. */
function firstLook(months: readonly Month[]): string | null {
  return (months.find((month) => month.given > 0) ?? months.at(-1))?.month ?? null;
}

export function Nights({ id, title }: { id: string; title: string }) {
  const { data, error } = useServer<NightsOfSponsor>('/sponsor-page/nights');
  const months = useMemo(() => monthsOf(data?.nights ?? []), [data]);
  return (
    <Part id={id} title={title} lead="The latest night first. What was read is told once the school has signed the night off.">
      {error && <Alert severity="error" role="alert">{error.message}</Alert>}
      {!data && !error && <Typography role="status">Reading…</Typography>}
      {data && data.nights.length === 0 && <Typography>No games yet. After the first game with your name in it, the night stands here.</Typography>}
      {months.length > 0 && <Months months={months} nightCount={data!.nights.length} />}
    </Part>
  );
}

function Months({ months, nightCount }: { months: readonly Month[]; nightCount: number }) {
  const isPrinting = usePrinting();
  const [turned, setTurned] = useState<ReadonlySet<string>>(new Set());
  const looked = firstLook(months);
  const isOpen = (month: string): boolean => turned.has(month) !== (month === looked || nightCount <= FEW_NIGHTS);
  const turn = (month: string): void => setTurned(new Set(turned.has(month) ? [...turned].filter((one) => one !== month) : [...turned, month]));
  return (
    <>
      {months.map((one) => (
        <MonthFold key={one.month} month={one} isOpen={isPrinting || isOpen(one.month)} onTurn={() => turn(one.month)} />
      ))}
    </>
  );
}

function MonthFold({ month: { month, nights, given, planned }, isOpen, onTurn }: { month: Month; isOpen: boolean; onTurn: () => void }) {
  const written = useWritten();
  const name = written.month(month);
  const said = [many(nights.length, 'night'), `${many(given, 'read')} given`, ...(planned > 0 ? [`${planned} planned`] : [])].join(', ');
  return (
    <Box sx={{ borderTop: 1, borderColor: 'divider' }}>
      <Typography component="h3" sx={{ m: 0 }}>
        <Button fullWidth variant="text" aria-expanded={isOpen} onClick={onTurn} sx={{ justifyContent: 'space-between', textAlign: 'left', gap: 2, px: 0.5, minHeight: 52, color: 'text.primary' }}>
          <Box component="span" sx={{ whiteSpace: 'nowrap' }}>{name}</Box>
          <Box component="span" sx={{ fontWeight: 400, color: 'text.secondary', textAlign: 'right' }}>
            {said} <Box component="span" aria-hidden="true" sx={{ displayPrint: 'none' }}>{isOpen ? '▴' : '▾'}</Box>
          </Box>
        </Button>
      </Typography>
      {isOpen && nights.map((night) => <Night key={night.nightId} night={night} />)}
    </Box>
  );
}
