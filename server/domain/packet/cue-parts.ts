import type { Language, PacketWindow } from './night-for-packet.ts';
import type { Cue } from './packet.ts';
import type { Segment } from './segment.ts';

/** What is printed of a segment. */
export interface PrintedSegment {
  readonly kind: 'spoken' | 'direction';
  readonly text: string;
  readonly sayAs: string | null;
}

/** A cue on paper, or a part of one that is longer than a page. */
export interface CuePart {
  readonly code: string;
  readonly title: string;
  readonly windowText: string | null;
  readonly seconds: number;
  readonly whoText: string | null;
  readonly caution: string | null;
  readonly sponsorName: string | null;
  readonly sponsorSayAs: string | null;
  readonly isSponsored: boolean;
  /** Boxes for each time it is given; one box with its outcomes for a planned read. */
  readonly boxes: number;
  readonly usesFallback: boolean;
  readonly language: Language;
  readonly segments: readonly PrintedSegment[];
  readonly second: { readonly language: Language; readonly segments: readonly PrintedSegment[] } | null;
  readonly part: number;
  readonly parts: number;
  /** So long that the typesetter has to look whether it fits the rest of a page. */
  readonly isLong: boolean;
  readonly startsPage: boolean;
}

const WINDOW_TEXTS: Readonly<Record<PacketWindow, string>> = {
  pregame: 'before the game', betweenPeriods: 'between periods', timeout: 'time-out', halftime: 'halftime', postgame: 'after the game', deadBall: 'when it happens',
};

/** Points of height that fit a page of either paper below the head of a cue; kept low, because letters differ in width. */
const PAGE_POINTS = 540;
const LONG_POINTS = 260;
const LETTERS_IN_LINE = 46;
const SPOKEN_LINE_POINTS = 24;
const MENTION_BOXES = 12;

function linesOf(text: string): number {
  return text.split('\n').reduce((sum, line) => sum + Math.max(1, Math.ceil(line.length / LETTERS_IN_LINE)), 0);
}

/** About how tall a segment is in print, in points. */
function pointsOf(segment: PrintedSegment): number {
  if (segment.kind === 'direction') return linesOf(segment.text) * 17 + 14;
  return linesOf(segment.text) * SPOKEN_LINE_POINTS + (segment.sayAs === null ? 14 : 32);
}

/** A paragraph longer than a page, cut at the ends of sentences, or between words where a sentence is that long. */
function shorter(segment: PrintedSegment): PrintedSegment[] {
  if (pointsOf(segment) <= PAGE_POINTS) return [segment];
  const most = Math.floor(PAGE_POINTS / SPOKEN_LINE_POINTS - 1) * LETTERS_IN_LINE;
  const pieces: string[] = [];
  let piece = '';
  const mostLines = Math.floor(PAGE_POINTS / SPOKEN_LINE_POINTS) - 1;
  const fits = (text: string): boolean => text.length <= most && linesOf(text) <= mostLines;
  for (const sentence of segment.text.match(/[^.!?\n]*[.!?\n]+\s*|[^.!?\n]+$/g) ?? [segment.text]) {
    for (const words of fits(sentence) ? [sentence] : (sentence.match(/\S{1,400}\s*/g) ?? [])) {
      if (piece !== '' && !fits(piece + words)) {
        pieces.push(piece);
        piece = '';
      }
      piece += words;
    }
  }
  return [...pieces, piece].map((text) => text.trim()).filter((text) => text !== '').map((text, place) => ({ ...segment, text, sayAs: place === 0 ? segment.sayAs : null }));
}

type Halves = Pick<CuePart, 'segments' | 'second'>;

/** The segments of both languages over as many pages as they need. */
function pagesOf(cue: Cue): Halves[] {
  const pages: { segments: PrintedSegment[]; second: PrintedSegment[]; points: number }[] = [{ segments: [], second: [], points: 0 }];
  const put = (segment: PrintedSegment, into: 'segments' | 'second'): void => {
    const points = pointsOf(segment);
    let page = pages.at(-1)!;
    if (page.points > 0 && page.points + points > PAGE_POINTS) pages.push((page = { segments: [], second: [], points: 0 }));
    page[into].push(segment);
    page.points += points;
  };
  const printed = ({ kind, text, sayAs }: Segment): PrintedSegment[] => shorter({ kind, text, sayAs });
  for (const segment of cue.segments.flatMap(printed)) put(segment, 'segments');
  for (const segment of (cue.second?.segments ?? []).flatMap(printed)) put(segment, 'second');
  return pages.map((page) => ({
    segments: page.segments,
    second: page.second.length === 0 || cue.second === null ? null : { language: cue.second.language, segments: page.second },
  }));
}

/**
 * What is printed of a cue, in as many parts as it needs pages: one for nearly every cue. Neither its
 * number nor its time of day is in it, so that a cue that moves by a minute stays as it is printed.
 */
export function partsOf(cue: Cue): CuePart[] {
  const pages = pagesOf(cue);
  return pages.map((halves, place) => {
    const points = [...halves.segments, ...(halves.second?.segments ?? [])].reduce((sum, segment) => sum + pointsOf(segment), 0);
    return {
      code: cue.code, title: cue.title, windowText: cue.window === null ? null : WINDOW_TEXTS[cue.window], seconds: cue.seconds,
      whoText: place === 0 ? cue.whoText : null, caution: place === 0 ? cue.caution : null,
      sponsorName: cue.sponsorName, sponsorSayAs: cue.sponsorSayAs, isSponsored: cue.isSponsored,
      boxes: cue.isSponsored && place === pages.length - 1 ? (cue.moment === 'mention' ? MENTION_BOXES : 1) : 0,
      usesFallback: cue.usesFallback, language: cue.language, ...halves,
      part: place + 1, parts: pages.length, isLong: points > LONG_POINTS, startsPage: cue.ownPage || pages.length > 1,
    };
  });
}
