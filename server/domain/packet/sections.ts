import { briefOf } from './brief.ts';
import { cardSides } from './card-sides.ts';
import { partsOf } from './cue-parts.ts';
import { BLANK_FORMS } from './forms.ts';
import { lineUpPage, rosterOf } from './line-up-page.ts';
import type { Cue, GameSheet, Packet, RunRow } from './packet.ts';
import { EMERGENCY_MOMENTS } from './script.ts';
import { tallySheets } from './tally.ts';
import { VOICE_CARD } from './voice-card.ts';

export type BlockKind =
  | 'cardFront' | 'cardBack' | 'run' | 'cue' | 'pointer' | 'lineUp' | 'roster' | 'calls' | 'score' | 'timeOuts' | 'fouls'
  | 'voice' | 'brief' | 'form' | 'tally';

/** A piece of a packet that is never taken apart: what is on a page is a list of blocks. */
export interface Block {
  /** Unique in a packet and the same from version to version. */
  readonly key: string;
  readonly kind: BlockKind;
  readonly startsPage: boolean;
  /** Everything that is printed of it, and nothing that is not. */
  readonly data: unknown;
}

/** The blocks behind one tab of the binder. */
export interface Section {
  readonly tab: string;
  readonly title: string;
  readonly blocks: readonly Block[];
}

/** What every page says of the night. */
export interface PacketHead {
  readonly departmentName: string;
  readonly title: string;
  /** The nicknames alone, so that the running head keeps to one line. */
  readonly shortTitle: string;
  readonly dayText: string;
}

export function headOf(packet: Packet): PacketHead {
  const game = packet.games.at(-1);
  const shortTitle = game === undefined ? packet.title : `${game.visitors.nickname} at ${game.home.nickname}`;
  return { departmentName: packet.departmentName, title: packet.title, shortTitle, dayText: packet.dayText };
}

const block = (key: string, kind: BlockKind, data: unknown, startsPage = false): Block => ({ key, kind, data, startsPage });
const isEmergency = (cue: Cue): boolean => (EMERGENCY_MOMENTS as readonly string[]).includes(cue.moment);
/** Calls of play are no cue of their own time: they lie with the sheets of the table. */
const isReference = (cue: Cue): boolean => cue.moment === 'callsOfPlay';
const isVerse = (cue: Cue): boolean => cue.moment === 'anthem' && cue.ownPage;

/** The head of every emergency page says once for all what the cues would repeat. */
const plainly = (cue: Cue): Cue => (cue.caution?.startsWith('All sponsor reads stop') ? { ...cue, caution: null } : cue);

/** A cue as one block, or as several where it is longer than a page. */
function cueBlocks(cue: Cue): Block[] {
  return partsOf(cue).map((part, place) => block(place === 0 ? `cue:${cue.cueKey}` : `cue:${cue.cueKey}/${place + 1}`, 'cue', part, place > 0 || part.startsPage));
}

function pointer(cue: Cue): Block {
  return block(`pointer:${cue.cueKey}`, 'pointer', { code: cue.code, title: cue.title, tab: 'Line-ups' });
}

/** The run of show, a block for each window. */
function runBlocks(packet: Packet): Block[] {
  const groups: { key: string; windowTitle: string; gameTitle: string | null; loadText: string | null; rows: RunRow[] }[] = [];
  for (const row of packet.runOfShow) {
    const last = groups.at(-1);
    const key = `run:${row.gameId ?? 'night'}:${row.windowTitle}`;
    if (last?.key === key) last.rows.push(row);
    else groups.push({ key, windowTitle: row.windowTitle, gameTitle: packet.games.length > 1 ? titleOf(packet, row.gameId) : null, loadText: loadOf(packet, row), rows: [row] });
  }
  const seen = new Map<string, number>();
  return groups.map(({ key, ...data }, place) => {
    const times = (seen.get(key) ?? 0) + 1;
    seen.set(key, times);
    return block(times === 1 ? key : `${key}/${times}`, 'run', { ...data, isFirst: place === 0, rows: data.rows.map(({ gameId: _, windowTitle: __, ...row }) => row) });
  });
}

/** How full the window is: "26 of 45 s", and by how much it runs over. */
function loadOf(packet: Packet, row: RunRow): string | null {
  const load = packet.windows.find((window) => window.gameId === row.gameId && window.title === row.windowTitle);
  if (load === undefined || load.capacitySeconds === null) return null;
  const filled = `${Math.round(load.filledSeconds)} of ${Math.round(load.capacitySeconds)} s`;
  return load.overSeconds > 0 ? `${filled}: over by ${Math.ceil(load.overSeconds)} s` : filled;
}

function titleOf(packet: Packet, gameId: string | null): string | null {
  return packet.games.find((game) => game.gameId === gameId)?.title ?? null;
}

/** The tab of a game's section; numbered where a night has several games. */
function tabOf(packet: Packet, tab: string, game: GameSheet): string {
  return packet.games.length > 1 ? `${tab} ${packet.games.indexOf(game) + 1}` : tab;
}

function scripts(packet: Packet, game: GameSheet): Section {
  const cues = packet.cues.filter((cue) => cue.gameId === game.gameId && !isEmergency(cue) && !isVerse(cue) && !isReference(cue));
  return {
    tab: tabOf(packet, 'Scripts', game),
    title: `Scripts: ${game.title}, ${game.startsText}`,
    blocks: cues.flatMap((cue) => (cue.lineUp !== null ? [pointer(cue)] : cueBlocks(cue))),
  };
}

function lineUps(packet: Packet, game: GameSheet): Section {
  const cues = packet.cues.filter((cue) => cue.gameId === game.gameId && cue.lineUp !== null);
  const colours = { visitors: coloursOf(game.visitors), home: coloursOf(game.home) };
  const spoken = cues.map((cue) => block(`lineup:${cue.cueKey}`, 'lineUp', { colours, ...lineUpPage(cue, cue.lineUp?.side === 'home' ? game.visitors : game.home) }, true));
  const rosters = (['visitors', 'home'] as const).flatMap((side) =>
    rosterOf(game[side]).map((data, place) =>
      block(`roster:${game.gameId}:${side}${place === 0 ? '' : `/${place + 1}`}`, 'roster', { colours, ...data }, side === 'visitors' || place > 0 || data.isLong)));
  return { tab: tabOf(packet, 'Line-ups', game), title: `Line-ups and rosters: ${game.title}`, blocks: [...spoken, ...rosters] };
}

const coloursOf = (team: GameSheet['home']) => ({ first: team.firstColour, second: team.secondColour });
const teamOf = (team: GameSheet['home']) => ({ side: team.side, schoolName: team.schoolName, shortName: team.shortName, nickname: team.nickname, sayAs: team.sayAs });

function sheets(packet: Packet, game: GameSheet): Section {
  const { calls, visitors, home, ...rest } = game;
  const data = { ...rest, colours: { visitors: coloursOf(visitors), home: coloursOf(home) }, visitors: teamOf(visitors), home: teamOf(home) };
  const reference = packet.cues.filter((cue) => cue.gameId === game.gameId && isReference(cue));
  const rows = (side: 'visitors' | 'home') => game[side].rows.map(({ number, name, instead }) => ({ number, name, instead }));
  const hasTimeOuts = game.fullTimeouts + game.shortTimeouts > 0;
  const hasFouls = game.playerFouls + game.teamFouls > 0 && game.foulPeriods.length > 0;
  return {
    tab: tabOf(packet, 'Sheets', game),
    title: `Sheets of the table: ${game.title}`,
    blocks: [
      block(`score:${game.gameId}`, 'score', data, true),
      ...(hasTimeOuts ? [block(`timeouts:${game.gameId}`, 'timeOuts', data)] : []),
      ...(calls.length > 0 ? [block(`calls:${game.gameId}`, 'calls', { calls })] : []),
      ...reference.flatMap(cueBlocks),
      ...(hasFouls ? [block(`fouls:${game.gameId}`, 'fouls', { ...data, rows: { visitors: rows('visitors'), home: rows('home') } }, true)] : []),
    ],
  };
}

/**
 * A packet as it lies in the binder: the sections in the order of their tabs, each with its blocks.
 * The same packet gives the same blocks. An empty section is left out.
 */
export function sectionsOf(packet: Packet): Section[] {
  const [front, back] = cardSides(packet);
  const { games } = packet;
  const sections: Section[] = [
    { tab: 'Card', title: 'Table card', blocks: [block('card:front', 'cardFront', front, true), block('card:back', 'cardBack', back, true)] },
    { tab: 'Run of show', title: 'Run of show', blocks: runBlocks(packet) },
    ...games.map((game) => scripts(packet, game)),
    ...games.map((game) => lineUps(packet, game)),
    ...games.map((game) => sheets(packet, game)),
    { tab: 'Anthem', title: 'Anthem', blocks: packet.cues.filter(isVerse).flatMap(cueBlocks) },
    { tab: 'Voice', title: 'Voice', blocks: [block('voice', 'voice', VOICE_CARD, true), block('brief', 'brief', briefOf(packet), true)] },
    {
      tab: 'Forms', title: 'Forms',
      blocks: [
        ...packet.cues.filter((cue) => cue.gameId === null && !isEmergency(cue)).flatMap(cueBlocks),
        ...BLANK_FORMS.map((form) => block(`form:${form.key}`, 'form', form, true)),
      ],
    },
    { tab: 'Tally', title: 'Tally by hand', blocks: tallySheets(packet).map((sheet) => block(`tally:${sheet.key}`, 'tally', sheet, true)) },
    { tab: 'Emergency', title: 'Emergency: wait for quiet, then read slowly', blocks: packet.cues.filter(isEmergency).map(plainly).flatMap(cueBlocks) },
  ];
  return sections.filter((section) => section.blocks.length > 0);
}
