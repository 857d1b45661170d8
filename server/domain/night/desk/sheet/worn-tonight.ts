import type { LineUpRow, TeamSheet } from '../../../packet/packet.ts';
import { numberWarnings } from '../../../season/legal-numbers.ts';
import type { SportRules } from '../../../season/sport-rules.ts';
import type { NewDeskEntry } from '../desk-entry.ts';
import type { TypedPlayer } from './roster-paste.ts';

/** What becomes of a typed player: an entry to write, nothing new, or a word on why the name is left out. */
export interface WornPlan {
  readonly player: TypedPlayer;
  readonly entry: NewDeskEntry | null;
  readonly sentence: string;
  /** false where the typed name is dropped: it is neither stored nor shown again */
  readonly keepsName: boolean;
}

/** The same name in spite of capitals, accents and spaces. */
export function isSameName(one: string | null, other: string | null): boolean {
  const folded = (name: string | null): string => (name ?? '').normalize('NFD').replace(/\p{M}/gu, '').toLowerCase().replace(/[^\p{L}]+/gu, '');
  return folded(one) !== '' && folded(one) === folded(other);
}

function entryOf(team: TeamSheet, player: TypedPlayer, wornInstead: string | null): NewDeskEntry {
  const detail = { name: player.name, ...(player.sayAs !== null ? { sayAs: player.sayAs } : {}), ...(wornInstead === null ? {} : { wornInstead }) };
  return { kind: 'worn', teamId: team.teamId, playerNumber: player.number, detail };
}

/** Our lists come from the office, which knows what families chose: a name it did not give may be one that was withheld. */
function planNameless(team: TeamSheet, player: TypedPlayer, wearer: LineUpRow | undefined): WornPlan {
  const entry = wearer?.name === null ? null : ({ kind: 'worn', teamId: team.teamId, playerNumber: player.number, detail: { isNotListed: true } } as const);
  return { player, entry, sentence: `Not on our list, so called number ${player.number} only. No name is kept.`, keepsName: false };
}

function planOne(team: TeamSheet, player: TypedPlayer, isOurs: boolean): WornPlan {
  const wearer = team.rows.find((row) => row.number === player.number);
  if (wearer !== undefined && wearer.instead !== null) {
    return { player, entry: null, sentence: `Number ${player.number} is not announced by name: the family chose so. No name is kept.`, keepsName: false };
  }
  const known = wearer !== undefined && isSameName(wearer.name, player.name);
  const elsewhere = known ? undefined : team.rows.find((row) => isSameName(row.name, player.name));
  if (elsewhere) return { player, entry: entryOf(team, player, elsewhere.number), sentence: `Wears ${player.number} tonight instead of ${elsewhere.number}.`, keepsName: true };
  if (known && (player.sayAs === null || player.sayAs === wearer.sayAs)) return { player, entry: null, sentence: 'On the list as it is.', keepsName: true };
  if (isOurs && !known) return planNameless(team, player, wearer);
  return { player, entry: entryOf(team, player, null), keepsName: true, sentence: known ? 'How to say it is new.' : wearer ? `Takes the place of ${wearer.name ?? 'whoever was listed'} under ${player.number}.` : 'New tonight.' };
}

/**
 * What typed or pasted players change on tonight's list of a team. A player found by name under another number wears this
 * one instead; a number whose family chose against the name keeps no name, whatever was typed. On our own lists no name
 * is new: who is not on them is called by number.
 *
 * @param team as it is worn by now, see `rosterTonight`
 * @param isOurs a team of the department's own schools
 */
export function planWorn(team: TeamSheet, players: readonly TypedPlayer[], isOurs: boolean): WornPlan[] {
  return players.map((player) => planOne(team, player, isOurs));
}

/** What the numbers of tonight's list are warned for; odd numbers are kept all the same. */
export function wornWarnings(rules: SportRules | null, rows: readonly Pick<LineUpRow, 'number'>[]): string[] {
  return numberWarnings(rules?.numberRule ?? 'none', rows.map((row) => row.number)).map((warning) => warning.sentence);
}
