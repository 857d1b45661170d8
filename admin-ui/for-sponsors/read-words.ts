import type { Count } from './counts.tsx';
import type { ContractOfSponsor, LineOfSponsor, ReadOfSponsor, ReadsOfSponsor } from './types.ts';
import { many } from './written.tsx';

/** What a promise has come to, figure by figure; what is nothing is left out. */
export function countsOf(reads: ReadsOfSponsor): Count[] {
  const wanted: [string, number, boolean][] = [
    ['Promised', reads.promised, true],
    ['From the season before', reads.cameOver, false],
    ['Given', reads.given, true],
    ['Made good', reads.madeGood, false],
    ['Credited', reads.credited, false],
    ['No longer due', reads.noLongerDue, false],
    ['Moved to next season', reads.carriedOver, false],
    ['Still to come', reads.stillToCome, true],
    ['Extra, as a gift', reads.extra, false],
  ];
  return wanted.flatMap(([label, value, always]) => (always || value > 0 ? [{ label, value: String(value) }] : []));
}

/** How far along a line is, in one sentence. */
export function lineSentence(line: LineOfSponsor): string {
  const done = line.given + line.madeGood;
  const whole = line.promised + line.cameOver;
  const games = line.gamesInAll > 0 ? ` after ${line.gamesPlayed} of ${many(line.gamesInAll, 'game')}` : '';
  if (whole === 0) return line.counting === 'onOccurrence' ? `Read whenever it happens. It has not happened yet${games}.` : 'Nothing was promised yet.';
  if (line.stillToCome === 0) return line.credited + line.noLongerDue + line.carriedOver === 0 ? `All ${whole} given.` : `Nothing is still to come: ${done} of ${whole} were given${line.credited > 0 ? `, ${line.credited} credited` : ''}.`;
  return `${done} of ${whole} given${games}.`;
}

/** What became of a read, as the sponsor says it. */
export const WHAT_WORDS: Record<ReadOfSponsor['what'], string> = {
  given: 'Read',
  extra: 'Read as an extra, as a gift',
  makegood: 'Read to make good',
  logged: 'Read, not confirmed by the school yet',
  notRead: 'Not read',
  cutShort: 'Cut short',
  takenBack: 'Taken back, does not count',
};

/** Where everything stands, for the first look; null where nothing was promised yet. */
export function wholeSentence(contracts: readonly ContractOfSponsor[], today: string): string | null {
  const running = contracts.filter((contract) => contract.endsOn >= today);
  const asked = running.length > 0 ? running : contracts.slice(0, 1);
  const lines = asked.flatMap((contract) => contract.lines);
  const sum = (countOf: (line: LineOfSponsor) => number): number => lines.reduce((count, line) => count + countOf(line), 0);
  const whole = sum((line) => line.promised + line.cameOver);
  if (whole === 0) return null;
  const toCome = sum((line) => line.stillToCome);
  const extra = sum((line) => line.extra);
  const credited = sum((line) => line.credited);
  const rest = toCome === 0 ? 'Nothing is still to come.' : `${toCome} ${toCome === 1 ? 'is' : 'are'} still to come.`;
  return `${sum((line) => line.given + line.madeGood)} of ${many(whole, 'promised read')} ${whole === 1 ? 'was' : 'were'} given.${credited > 0 ? ` ${credited} ${credited === 1 ? 'was' : 'were'} credited.` : ''} ${rest}${extra > 0 ? ` ${many(extra, 'more read')} came as a gift.` : ''}`;
}
