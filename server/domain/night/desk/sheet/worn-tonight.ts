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
}

/** The same name in spite of capitals, accents and spaces. */
export function isSameName(one: string | null, other: string | null): boolean {
  const folded = (name: string | null): string => (name ?? '').normalize('NFD').replace(/\p{M}/gu, '').toLowerCase().replace(/[^\p{L}]+/gu, '');
  return folded(one) !== '' && folded(one) === folded(other);
}

function entryOf(team: TeamSheet, player: TypedPlayer, named: boolean, wornInstead: string | null): NewDeskEntry {
  const detail = { ...(named ? { name: player.name } : {}), ...(named && player.sayAs !== null ? { sayAs: player.sayAs } : {}), ...(wornInstead === null ? {} : { wornInstead }) };
  return { kind: 'worn', teamId: team.teamId, playerNumber: player.number, detail };
}

function planOne(team: TeamSheet, player: TypedPlayer): WornPlan {
  const wearer = team.rows.find((row) => row.number === player.number);
  if (wearer !== undefined && wearer.instead !== null) {
    return { player, entry: null, sentence: `Number ${player.number} is not announced by name: the family chose so. No name is kept.` };
  }
  const elsewhere = wearer && isSameName(wearer.name, player.name) ? undefined : team.rows.find((row) => isSameName(row.name, player.name));
  if (elsewhere) return { player, entry: entryOf(team, player, true, elsewhere.number), sentence: `Wears ${player.number} tonight instead of ${elsewhere.number}.` };
  if (wearer && isSameName(wearer.name, player.name) && (player.sayAs === null || player.sayAs === wearer.sayAs)) return { player, entry: null, sentence: 'On the list as it is.' };
  const known = wearer !== undefined && isSameName(wearer.name, player.name);
  return { player, entry: entryOf(team, player, true, null), sentence: known ? 'How to say it is new.' : wearer ? `Takes the place of ${wearer.name ?? 'whoever was listed'} under ${player.number}.` : 'New tonight.' };
}

/**
 * What typed or pasted players change on tonight's list of a team. A player found by name under another number wears this
 * one instead; a number whose family chose against the name keeps no name, whatever was typed.
 *
 * @param team as it is worn by now, see `rosterTonight`
 */
export function planWorn(team: TeamSheet, players: readonly TypedPlayer[]): WornPlan[] {
  return players.map((player) => planOne(team, player));
}

/** What the numbers of tonight's list are warned for; odd numbers are kept all the same. */
export function wornWarnings(rules: SportRules | null, rows: readonly Pick<LineUpRow, 'number'>[]): string[] {
  return numberWarnings(rules?.numberRule ?? 'none', rows.map((row) => row.number)).map((warning) => warning.sentence);
}
