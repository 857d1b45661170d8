import type { Cue, GameSheet, Packet } from './packet.ts';

export interface TallyRow {
  readonly code: string;
  readonly title: string;
  readonly sponsorName: string | null;
  readonly isMention: boolean;
}

interface TallyWindow {
  readonly title: string;
  readonly rows: readonly TallyRow[];
}

/** A sheet to tick by hand while no screen works; its codes are those the desk takes. */
export interface TallySheet {
  readonly key: string;
  readonly gameTitle: string;
  /** Left and right half of the sheet, each with the reads of some windows. */
  readonly halves: readonly (readonly TallyWindow[])[];
  readonly mentions: readonly TallyRow[];
  readonly mentionBoxes: number;
  readonly noteLines: number;
  readonly isFirst: boolean;
  readonly part: number;
  readonly parts: number;
}

const WINDOWS = [
  ['pregame', 'Before the game'],
  ['timeout', 'Time-outs'],
  ['betweenPeriods', 'Between periods'],
  ['halftime', 'Halftime'],
  ['postgame', 'After the game'],
  ['deadBall', 'When it happens'],
] as const;
const MENTION_BOXES = 10;
const ROWS_ON_SHEET = 20;

const rowOf = (cue: Cue): TallyRow => ({ code: cue.code, title: cue.title, sponsorName: cue.sponsorName, isMention: cue.moment === 'mention' });

/** Windows in order over two halves of about the same height; one window may be taken apart. */
function halved(windows: readonly TallyWindow[]): TallyWindow[][] {
  const most = Math.ceil(windows.reduce((sum, window) => sum + window.rows.length + 1, 0) / 2);
  const halves: [TallyWindow[], TallyWindow[]] = [[], []];
  let lines = 0;
  for (const window of windows) {
    const room = Math.max(0, most - lines - 1);
    const [left, right] = room > 0 ? [window.rows.slice(0, room), window.rows.slice(room)] : [[], window.rows];
    if (left.length > 0) halves[0].push({ ...window, rows: left });
    if (right.length > 0) halves[1].push({ title: left.length > 0 ? `${window.title}, continued` : window.title, rows: right });
    lines += window.rows.length + 1;
  }
  return halves;
}

function sheetsOf(packet: Packet, game: GameSheet): TallySheet[] {
  const cues = packet.cues.filter((cue) => cue.gameId === game.gameId && cue.isSponsored);
  const mentions = cues.filter((cue) => cue.moment === 'mention').map(rowOf);
  const rows = WINDOWS.flatMap(([window, title]) => cues.filter((cue) => cue.window === window && cue.moment !== 'mention').map((cue) => ({ title, row: rowOf(cue) })));
  const parts = Math.max(1, Math.ceil(rows.length / ROWS_ON_SHEET));
  return Array.from({ length: parts }, (_, place) => {
    const here = rows.slice(place * ROWS_ON_SHEET, (place + 1) * ROWS_ON_SHEET);
    return {
      key: place === 0 ? game.gameId : `${game.gameId}/${place + 1}`,
      gameTitle: game.title,
      halves: halved([...new Set(here.map(({ title }) => title))].map((title) => ({ title, rows: here.filter((one) => one.title === title).map(({ row }) => row) }))),
      mentions: place === 0 ? mentions : [],
      mentionBoxes: MENTION_BOXES,
      noteLines: Math.max(1, 9 - Math.ceil(here.length / 2) - (place === 0 ? mentions.length * 2 : 0)),
      isFirst: place === 0 && game === packet.games[0],
      part: place + 1,
      parts,
    };
  });
}

/** A tally for each game; one with no sponsor's read keeps its place for whatever comes up. */
export function tallySheets(packet: Packet): TallySheet[] {
  return packet.games.flatMap((game) => sheetsOf(packet, game));
}
