import { roleWords } from './role-words.ts';
import type { CardRow, GameSheet, Packet } from './packet.ts';

export interface CardTitle {
  readonly kind: 'title';
  readonly text: string;
}

export interface CardLine {
  readonly kind: 'row';
  readonly code: string;
  readonly title: string;
  readonly sponsorName: string | null;
  readonly sponsorSayAs: string | null;
  /** Of sponsor reads only: the seconds of a line-up move with every change of its names. */
  readonly seconds: number | null;
  readonly isSponsored: boolean;
  readonly boxes: number;
}

export type CardItem = CardTitle | CardLine;

export interface ScoreGrid {
  readonly title: string;
  readonly periods: readonly string[];
  readonly overtime: string | null;
  readonly totals: readonly string[];
  readonly visitors: string;
  readonly home: string;
}

export interface CardFront {
  readonly title: string;
  readonly venueText: string;
  readonly games: readonly { readonly startsText: string; readonly level: string; readonly visitors: CardTeam; readonly home: CardTeam }[];
  readonly people: readonly { readonly role: string; readonly name: string; readonly sayAs: string | null; readonly arrivesText: string | null }[];
  readonly emergency: Packet['emergency'];
  readonly columns: readonly (readonly CardItem[])[];
}

export interface CardBack {
  readonly columns: readonly (readonly CardItem[])[];
  readonly scores: readonly ScoreGrid[];
  readonly nextTimeOut: readonly { readonly code: string; readonly sponsorName: string | null }[];
  readonly nextGame: Packet['nextGame'];
}

interface CardTeam {
  readonly name: string;
  readonly sayAs: string | null;
}

const LETTERS_IN_LINE = 34;

function itemsOf(packet: Packet): CardItem[] {
  return packet.card.flatMap(({ title, rows }): CardItem[] => [{ kind: 'title', text: title }, ...rows.map(lineOf)]);
}

function lineOf({ code, title, sponsorName, sponsorSayAs, seconds, isSponsored, boxes }: CardRow): CardLine {
  return { kind: 'row', code, title, sponsorName, sponsorSayAs, seconds: isSponsored ? seconds : null, isSponsored, boxes };
}

/** About how many lines of the card an item takes. */
function linesIn(item: CardItem): number {
  if (item.kind === 'title') return 2;
  const sponsor = item.sponsorName === null ? 0 : Math.ceil((item.sponsorName.length + (item.sponsorSayAs?.length ?? 0)) / LETTERS_IN_LINE);
  return Math.ceil(item.title.length / LETTERS_IN_LINE) + sponsor + (item.boxes > 1 ? 1 : 0) + 0.4;
}

/** Deals the items out in order, each column as full as its share of the room; a title stays with its first row. */
function dealt(items: readonly CardItem[], shares: readonly number[]): CardItem[][] {
  const columns: CardItem[][] = shares.map(() => []);
  const room = shares.reduce((sum, share) => sum + share, 0);
  const total = items.reduce((sum, item) => sum + linesIn(item), 0);
  let [column, dealtLines, limit] = [0, 0, (total * (shares[0] ?? 1)) / room];
  let title: string | null = null;
  items.forEach((item, place) => {
    const next = items[place + 1];
    const needed = linesIn(item) + (item.kind === 'title' && next !== undefined ? linesIn(next) : 0);
    if (dealtLines + needed / 2 > limit && column < shares.length - 1 && (columns[column]?.length ?? 0) > 0) {
      column += 1;
      limit += (total * (shares[column] ?? 1)) / room;
      if (item.kind === 'row' && title !== null) columns[column]?.push({ kind: 'title', text: `${title}, continued` });
    }
    if (item.kind === 'title') title = item.text.replace(/, continued$/, '');
    columns[column]?.push(item);
    dealtLines += linesIn(item);
  });
  return columns;
}

const teamName = (team: GameSheet['home']): CardTeam => ({ name: `${team.schoolName} ${team.nickname}`, sayAs: team.sayAs });

/**
 * The table card: the whole night on two sides of one sheet. The front has who is here, what to do in
 * an emergency and the first cues; the back has the rest, the queue for time-outs and the scores.
 */
export function cardSides(packet: Packet): readonly [CardFront, CardBack] {
  const { games, people } = packet;
  const items = itemsOf(packet);
  const lines = items.reduce((sum, item) => sum + linesIn(item), 0);
  // The heads of both sides take room from the columns below them.
  const frontHead = 9 + games.length * 2 + Math.max(people.length * 1.3, 6);
  const backHead = 3 + games.length * 5 + Math.ceil(packet.nextTimeOut.length / 2);
  const side = (lines / 2 + frontHead + backHead) / 2;
  const [front, back] = [Math.max(side - frontHead, side * 0.15), Math.max(side - backHead, side * 0.15)];
  const columns = dealt(items, [front, front, back, back]);
  const sponsorOf = new Map(packet.cues.map((cue) => [cue.code, cue.sponsorName]));
  return [
    {
      title: packet.title, venueText: packet.venueText,
      games: games.map((game) => ({ startsText: game.startsText, level: game.level, visitors: teamName(game.visitors), home: teamName(game.home) })),
      people: people.map(({ role, name, sayAs, arrivesText }) => ({ role: roleWords(role), name, sayAs, arrivesText })),
      emergency: packet.emergency,
      columns: columns.slice(0, 2),
    },
    {
      columns: columns.slice(2),
      scores: games.map(({ title, periods, overtime, totals, visitors, home }) => ({ title, periods, overtime, totals, visitors: visitors.nickname, home: home.nickname })),
      nextTimeOut: packet.nextTimeOut.map((code) => ({ code, sponsorName: sponsorOf.get(code) ?? null })),
      nextGame: packet.nextGame,
    },
  ];
}
