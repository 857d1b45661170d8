import type { NewDeskEntry } from '../../../server/domain/night/desk/desk-entry.ts';
import { timeOutWords } from '../../../server/domain/night/desk/sheet/time-outs.ts';
import type { SportRules } from '../../../server/domain/season/sport-rules.ts';

/** One thing that happens in play: what the button says, its key, and the entry it makes with a team and a number. */
export interface What {
  readonly id: string;
  readonly words: string;
  readonly key: string;
  /** the team alone: a number tapped for it only tells the team */
  readonly isTeams: boolean;
  /** rare ones stand in a second row */
  readonly isRare: boolean;
  readonly entry: Pick<NewDeskEntry, 'kind' | 'detail'>;
}

const FOULS = [
  { id: 'common', words: 'Foul', key: 'f', isTeams: false, isRare: false },
  { id: 'control', words: 'Foul in control', key: 'j', isTeams: false, isRare: true },
  { id: 'technical', words: 'Technical', key: 'k', isTeams: false, isRare: true },
  { id: 'bench', words: 'Bench technical', key: 'b', isTeams: true, isRare: true },
  { id: 'coach', words: 'Coach technical', key: 'K', isTeams: true, isRare: true },
] as const;
const TIME_OUT_WORDS: Readonly<Record<string, string>> = { full: 'Full time-out', thirty: 'Thirty time-out' };
const TIME_OUT_KEYS: Readonly<Record<string, string>> = { full: 'g', thirty: 'i', conference: 'g' };

const score = (rules: SportRules): What[] => rules.scores.map(({ what, words, points, perPlayer }, place) => ({
  // Baskets have the key of their points, other scores that of their place.
  id: what, words: words.replace(/ points$/, ''), key: String(rules.entryKinds.includes('basket') ? points : place + 1), isTeams: !perPlayer, isRare: false,
  entry: { kind: rules.entryKinds.includes('basket') ? 'basket' : 'score', detail: { what, points } },
}));

const timeOuts = (rules: SportRules): What[] => [...new Set(rules.timeOuts.map((rule) => rule.name))].map((name) => ({
  id: `timeOut ${name}`, words: name === 'conference' ? 'Conference' : rules.timeOuts.every((rule) => rule.name === name) ? 'Time-out' : (TIME_OUT_WORDS[name] ?? timeOutWords(name)),
  key: TIME_OUT_KEYS[name] ?? 'g', isTeams: true, isRare: false, entry: { kind: 'timeOut', detail: { timeOut: name } },
}));

/** What the table can log in a game of this sport, in the order of the buttons. */
export function whatsOf(rules: SportRules): What[] {
  const has = (kind: (typeof rules.entryKinds)[number]): boolean => rules.entryKinds.includes(kind);
  return [
    ...(has('batter') ? [{ id: 'batter', words: 'At bat', key: '8', isTeams: false, isRare: false, entry: { kind: 'batter' as const } }] : []),
    ...(has('serve') ? [{ id: 'serve', words: 'Serve', key: '8', isTeams: false, isRare: false, entry: { kind: 'serve' as const } }] : []),
    ...(has('basket') || has('score') ? score(rules) : []),
    ...(has('foul') ? FOULS.map(({ id, ...foul }) => ({ ...foul, id: `foul ${id}`, entry: { kind: 'foul' as const, detail: { foul: id } } })) : []),
    ...(has('substitution') ? [{ id: 'substitution', words: 'Now in', key: 's', isTeams: false, isRare: false, entry: { kind: 'substitution' as const } }] : []),
    ...(has('timeOut') ? timeOuts(rules) : []),
  ].toSorted((one, other) => Number(one.isRare) - Number(other.isRare));
}
