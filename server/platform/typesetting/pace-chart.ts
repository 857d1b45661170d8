import { daysBetween } from '../../domain/day.ts';
import type { StatementPace } from '../../domain/reports/statement-content.ts';
import { dayText } from './amount-text.ts';

/** A chart as the template draws it: places are shares of its width from the left and of its height from below. */
export interface PaceChart {
  readonly expected: readonly (readonly [number, number])[];
  readonly given: readonly (readonly [number, number])[];
  readonly ticks: readonly { readonly at: number; readonly label: string }[];
  readonly days: readonly { readonly at: number; readonly label: string }[];
  readonly lastExpected: string;
  readonly lastGiven: string;
  /** what it shows, for whoever does not see it */
  readonly alt: string;
}

const MOST_TICKS = 5;
const MOST_DAYS = 6;

/** Null where there is nothing to draw a line between. */
export function paceChart(pace: readonly StatementPace[], locale: string): PaceChart | null {
  const [first, last] = [pace[0], pace.at(-1)];
  if (!first || !last || pace.length < 2) return null;
  const days = Math.max(1, daysBetween(first.on, last.on));
  const step = niceStep(Math.max(1, ...pace.map((point) => Math.max(point.expected, point.given))));
  const top = step * Math.ceil(Math.max(1, ...pace.map((point) => Math.max(point.expected, point.given))) / step);
  const across = (point: StatementPace): number => rounded(daysBetween(first.on, point.on) / days);
  const every = Math.max(1, Math.ceil(pace.length / MOST_DAYS));
  const shown = pace.filter((point, place) => place === pace.length - 1 || (place % every === 0 && 1 - across(point) > 0.12));
  return {
    expected: pace.map((point) => [across(point), rounded(point.expected / top)]),
    given: pace.map((point) => [across(point), rounded(point.given / top)]),
    ticks: Array.from({ length: Math.floor(top / step) + 1 }, (_, place) => ({ at: rounded((place * step) / top), label: String(place * step) })),
    days: apart(shown.map((point) => ({ at: across(point), label: shortDayOf(point.on, locale) }))),
    lastExpected: `${last.expected} expected`,
    lastGiven: `${last.given} given`,
    alt: `Pace of the reads from ${dayText(first.on, locale)} to ${dayText(last.on, locale)}: by the last of these days ${last.expected} should have been given at an even pace and ${last.given} were. The table of nights has each of them.`,
  };
}

/** The least of 1, 2, 5, 10, 20 … that needs no more ticks than there is room for. */
function niceStep(most: number): number {
  for (let size = 1; ; size *= 10) for (const one of [1, 2, 5]) if (most / (one * size) <= MOST_TICKS) return one * size;
}

/** Labels that would stand on each other are left out, the last one stays. */
function apart(labels: readonly { at: number; label: string }[]): { at: number; label: string }[] {
  const kept: { at: number; label: string }[] = [];
  for (const label of labels) if (kept.length === 0 || label.at - kept.at(-1)!.at > 0.11) kept.push(label);
  return kept;
}

const rounded = (share: number): number => Math.round(share * 10_000) / 10_000;

function shortDayOf(day: string, locale: string): string {
  const [year, month, date] = day.split('-').map(Number) as [number, number, number];
  return new Intl.DateTimeFormat(locale, { month: 'short', day: 'numeric', timeZone: 'UTC' }).format(Date.UTC(year, month - 1, date));
}
