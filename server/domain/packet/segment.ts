import { KNOWN_DIRECTIONS } from './directions.ts';
import { spokenSeconds, spokenSecondsWithName } from './spoken-time.ts';
import type { Voice } from './voice.ts';

/** A piece of a cue: words that are said, or a direction that is never said. */
export interface Segment {
  readonly kind: 'spoken' | 'direction';
  readonly text: string;
  readonly sayAs: string | null;
  readonly seconds: number;
}

/** Whole seconds a direction takes, by the table of known directions; none for what only says how. */
export function directionSeconds(direction: string): number {
  return KNOWN_DIRECTIONS.map((known) => known.secondsOf(direction)).find((seconds) => seconds !== null) ?? 0;
}

/** Words that are said. @param sayAs how `name`, which stands in the text, is said */
export function spoken(text: string, voice: Voice, sayAs: string | null = null, name: string | null = null): Segment {
  const seconds = sayAs === null || name === null ? spokenSeconds(text, voice) : spokenSecondsWithName(text, name, sayAs, voice);
  return { kind: 'spoken', text, sayAs, seconds };
}

export function direction(text: string): Segment {
  const seconds = directionSeconds(text);
  const pause = /^pause (\d{1,3})$/i.exec(text);
  return { kind: 'direction', text: pause ? `Pause ${seconds} seconds` : text, sayAs: null, seconds };
}

/**
 * Takes a script apart into what is said and what is done. Directions stand in double square
 * brackets, `[[pause 3]]` or `[[wait for applause]]`; an empty line begins a new paragraph.
 */
export function segmentsOf(text: string, voice: Voice): Segment[] {
  const segments: Segment[] = [];
  for (const piece of text.split(/(\[\[[^[\]]*\]\])/)) {
    const marked = /^\[\[(.*)\]\]$/s.exec(piece);
    if (marked) {
      const said = (marked[1] ?? '').replace(/\s+/g, ' ').trim();
      if (said !== '') segments.push(direction(said.replace(/^./, (first) => first.toUpperCase())));
      continue;
    }
    for (const paragraph of piece.split(/\n[ \t\r]*\n\s*/)) {
      const words = paragraph.replace(/[ \t\r\f\v]+/g, ' ').replace(/ *\n */g, '\n').trim();
      if (words !== '') segments.push(spoken(words, voice));
    }
  }
  return segments;
}

/** All the seconds of a cue, spoken and waited. */
export function secondsOf(segments: readonly Segment[]): number {
  return segments.reduce((sum, segment) => sum + segment.seconds, 0);
}
