import { roleWords } from './role-words.ts';
import type { Packet } from './packet.ts';

/** One page for whoever is called in at four o'clock. */
export interface Brief {
  readonly title: string;
  readonly dayText: string;
  readonly venueText: string;
  readonly arriveText: string | null;
  /** Who to ask for, in the order to ask. */
  readonly people: readonly { readonly role: string; readonly name: string; readonly sayAs: string | null; readonly arrivesText: string | null }[];
  readonly games: readonly { readonly startsText: string; readonly title: string }[];
  readonly counts: { readonly cues: number; readonly sponsored: number };
  readonly rules: readonly string[];
  readonly emergency: Packet['emergency'];
  readonly codes: readonly { readonly letter: string; readonly meaning: string }[];
  readonly order: readonly string[];
}

/** @source common practice, no source */
const RULES = [
  'Read what is written, as it is written. Leave out what you are not sure of; add nothing.',
  'Speak only while the clock is stopped and the ball is dead.',
  'Visitors first and level, home team second and with energy. A name you cannot say: ask, before the line-up.',
  'Tick each sponsor read the moment it is given. One you missed is not lost: say so on the sheet, and it is made good.',
  'If anyone is hurt, or anything frightens you: stop, wait, turn to the last tab. No sponsor is named near it.',
];

const CODES = [
  { letter: 'P', meaning: 'before the game' },
  { letter: 'T', meaning: 'time-out' },
  { letter: 'B', meaning: 'between periods' },
  { letter: 'H', meaning: 'halftime' },
  { letter: 'F', meaning: 'after the game' },
  { letter: 'M', meaning: 'mention, when it happens' },
  { letter: 'N', meaning: 'notice on a form' },
  { letter: 'E', meaning: 'emergency' },
];

const ORDER = [
  'Take the table card: two sides, everything in order. The boxes in black are sponsors.',
  'Read the names on the line-up pages aloud once, with a coach beside you if you can.',
  'Try the microphone with the card for the voice, then lay the packet open at the run of show.',
];

const ASKED_FIRST = ['athletic director', 'director', 'spotter', 'scorer', 'clock'];

const placeOf = (role: string): number => {
  const place = ASKED_FIRST.indexOf(role.toLowerCase());
  return place === -1 ? ASKED_FIRST.length : place;
};

export function briefOf(packet: Packet): Brief {
  const announcer = packet.people.find((person) => person.role === 'announcer');
  const others = packet.people.filter((person) => person.role !== 'announcer');
  const letters = new Set(packet.cues.flatMap((cue) => /^(?:\d+-)?([A-Z])/.exec(cue.code)?.[1] ?? []));
  return {
    title: packet.title, dayText: packet.dayText, venueText: packet.venueText,
    arriveText: announcer?.arrivesText ?? null,
    people: others
      .toSorted((one, other) => placeOf(one.role) - placeOf(other.role))
      .slice(0, 6)
      .map(({ role, name, sayAs, arrivesText }) => ({ role: roleWords(role), name, sayAs, arrivesText })),
    games: packet.games.map(({ startsText, title }) => ({ startsText, title })),
    counts: { cues: packet.cues.length, sponsored: packet.cues.filter((cue) => cue.isSponsored).length },
    rules: RULES,
    emergency: packet.emergency,
    codes: CODES.filter(({ letter }) => letters.has(letter)),
    order: ORDER,
  };
}
