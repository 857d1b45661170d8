import type { PositionRule, SportRules } from '../season/sport-rules.ts';
import { INSTEAD } from './line-up.ts';
import { ordinalWords } from './number-words.ts';
import type { LineUpRow, TeamSheet } from './packet.ts';
import type { Segment } from './segment.ts';
import { direction, spoken } from './segment.ts';
import type { Voice } from './voice.ts';

/** What a line-up is read by where the sport is not known. */
const PLAIN: Pick<SportRules, 'lineUp' | 'afterEachStarter' | 'positions' | 'weightClasses'> = {
  lineUp: 'visitorsThenHome', afterEachStarter: 'Wait until the starter has greeted the other bench and turned for the official', positions: [], weightClasses: [],
};

type Rules = typeof PLAIN;

/** "1 SS" in the position of a batter: bats first, plays shortstop. */
const BATTING = /^(\d{1,2})[.)]?\s+(.+)$/;

const upper = (text: string): string => text.replace(/^./u, (first) => first.toUpperCase());
const ruleOf = (position: string | null, { positions }: Rules): PositionRule | undefined => positions.find((one) => one.short === position?.toUpperCase());

/** "Guard" for "G"; what the roster says where it is no short form. */
function positionWords(position: string | null, rules: Rules): string | null {
  const place = BATTING.exec(position ?? '');
  const own = place === null ? position : (place[2] ?? null);
  return ruleOf(own, rules)?.name ?? own;
}

/** What stands before the number: the position, the weight, the place at bat. */
function leadOf(row: LineUpRow, rules: Rules): string | null {
  if (rules.lineUp === 'byWeightClass') return row.position === null ? null : `at ${row.position.replace(/\D/g, '') || row.position} pounds`;
  const position = positionWords(row.position, rules);
  const place = rules.lineUp === 'battingOrder' ? BATTING.exec(row.position ?? '') : null;
  return place === null ? position : `batting ${ordinalWords(Number(place[1]))}, ${position ?? ''}`;
}

/** What is said for one starter: position, number, name, as far as the family allows. */
function starterSegment(row: LineUpRow, rules: Rules, voice: Voice, team: string | null): Segment {
  if (row.instead === INSTEAD.silence) return direction(`Number ${row.number} is not announced: leave the space and go on`);
  if (row.instead === INSTEAD.aMember) return spoken(team === null ? 'A member of the team.' : `For the ${team}, a member of the team.`, voice);
  const number = rules.lineUp === 'byWeightClass' ? null : `number ${row.number}`;
  const who = row.name ?? (number === null ? 'a member of the team' : null);
  const said = upper(`${[team === null ? null : `for the ${team}`, leadOf(row, rules), number, who].filter((part) => part !== null).join(', ')}.`);
  return spoken(said, voice, row.name === null ? null : row.sayAs, row.name);
}

/** The starters with a wait after each, where the sport has one. */
function oneByOne(rows: readonly LineUpRow[], rules: Rules, voice: Voice): Segment[] {
  return rows.flatMap((row) => [starterSegment(row, rules, voice, null), ...waitAfter(rules)]);
}

const waitAfter = ({ afterEachStarter }: Rules): Segment[] => (afterEachStarter === null ? [] : [direction(afterEachStarter)]);

/** Unit after unit in the order of the profile's positions; who plays in none comes first. */
function byUnit(rows: readonly LineUpRow[], rules: Rules, voice: Voice): Segment[] {
  const units = [...new Set(rules.positions.flatMap(({ unit }) => unit ?? []))];
  const unitOf = (row: LineUpRow): string | null => ruleOf(row.position, rules)?.unit ?? null;
  const segments = oneByOne(rows.filter((row) => unitOf(row) === null), rules, voice);
  for (const unit of units) {
    const own = rows.filter((row) => unitOf(row) === unit);
    if (own.length > 0) segments.push(spoken(`On ${unit}.`, voice), ...oneByOne(own, rules, voice), direction(`Wait for applause for the ${unit}`));
  }
  return segments;
}

const weightOf = (row: LineUpRow): number => Number(row.position?.replace(/\D/g, '') || Infinity);

function byWeightClass(rows: readonly LineUpRow[], rules: Rules, voice: Voice): Segment[] {
  return oneByOne(rows.toSorted((one, other) => weightOf(one) - weightOf(other) || 0), rules, voice);
}

/** In the order of the places at bat; without them by number, with a word that the book has the order. */
function battingOrder(rows: readonly LineUpRow[], rules: Rules, voice: Voice): Segment[] {
  const placeOf = (row: LineUpRow): number => Number(BATTING.exec(row.position ?? '')?.[1] ?? Infinity);
  if (!rows.some((row) => placeOf(row) !== Infinity)) return [direction('Take the batting order from the official book'), ...oneByOne(rows, rules, voice)];
  return oneByOne(rows.toSorted((one, other) => placeOf(one) - placeOf(other) || 0), rules, voice);
}

/** A visitor, then a starter of the home team, and so on; the home team's own cue has its coach. */
function alternating(visitors: TeamSheet, home: TeamSheet, rules: Rules, voice: Voice): Segment[] {
  const [theirs, ours] = [startersOf(visitors), startersOf(home)];
  return Array.from({ length: Math.max(theirs.length, ours.length) }, (_, place) => [
    ...(theirs[place] ? [starterSegment(theirs[place], rules, voice, visitors.nickname)] : []),
    ...(ours[place] ? [starterSegment(ours[place], rules, voice, home.nickname)] : []),
    ...waitAfter(rules),
  ]).flat();
}

const startersOf = (sheet: TeamSheet): LineUpRow[] => sheet.rows.filter((row) => row.isStarter);

const FORMS = { visitorsThenHome: oneByOne, byUnit, byWeightClass, battingOrder } as const;

function startersSegments(sheet: TeamSheet, other: TeamSheet | null, rules: Rules, voice: Voice): Segment[] {
  if (rules.lineUp === 'alternating' && other === null) return [];
  const rows = startersOf(sheet);
  if (rows.length === 0) return [direction('No starters are marked: take them from the official book')];
  if (rules.lineUp === 'alternating') return alternating(sheet, other!, rules, voice);
  return FORMS[rules.lineUp](rows, rules, voice);
}

/**
 * The starters in the form of the sport: by number, by unit, by weight class, in batting order, or one of
 * each team in turn; then the head coach.
 *
 * @param sheet visitors first, then home
 * @param rules of the sport; null for a sport the house does not know
 * @param other the home team while the visitors are read, for a form that names both in turn; else null
 * @source common practice, no source
 */
export function lineUpSegments(sheet: TeamSheet, voice: Voice, rules: Rules | null = null, other: TeamSheet | null = null): Segment[] {
  const segments = startersSegments(sheet, other, rules ?? PLAIN, voice);
  if (sheet.headCoach !== null) {
    segments.push(spoken(`${sheet.side === 'home' ? 'Your' : 'The'} head coach, ${sheet.headCoach}.`, voice, sheet.headCoachSayAs, sheet.headCoach));
    segments.push(direction('pause 3'));
  }
  return segments;
}
