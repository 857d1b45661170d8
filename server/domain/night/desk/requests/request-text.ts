import type { Segment } from '../../../packet/segment.ts';
import type { RequestScript } from '../bundle.ts';
import { REQUEST_FORMS } from './request-form.ts';
import type { RequestField } from './request-form.ts';
import type { RequestFields, RequestKind } from './request.ts';

export const REQUEST_TITLES: Readonly<Record<RequestKind, string>> = {
  vehicle: 'Vehicle notice', fundraiser: 'Fundraiser or club', music: 'Music', other: 'Something else',
  lostChild: 'A child is waiting', foundItem: 'Something was found', medical: 'A doctor is needed',
};

type Piece = Pick<Segment, 'kind' | 'text'>;

const said = (text: string): Piece => ({ kind: 'spoken', text });
const done = (text: string): Piece => ({ kind: 'direction', text });

/** Own words where the bundle has none, with blanks like those of a script. */
const OWN_WORDS: Readonly<Record<RequestKind, readonly Piece[]>> = {
  vehicle: [
    done('Spell the plate character by character, a breath between. Say it all twice.'),
    said('Your attention, please. Would the owner of a ____ (color and make), parked at ____ (where), license plate __ __, please go to it now: ____ (what is wrong).'),
    done('Pause 2 seconds'),
    said('Once again: a ____ (color and make), parked at ____ (where), license plate __ __. Please go to it now: ____ (what is wrong).'),
  ],
  fundraiser: [said('From ____ (group): ____ (what), on ____ (day) at ____ (where). What comes in goes to ____ (what for).')],
  music: [done('Play “____ (title)” by ____ (artist) at the next break.')],
  other: [said('____ (text)')],
  lostChild: [
    done('The child stays with two adults at the table. Say no name, no age and nothing of what the child looks like or wears.'),
    said('Your attention, please. Someone is waiting for their family at the scorer’s table. If a child who came with you is not beside you, please come to the table now.'),
  ],
  foundItem: [done('Say no name that is on it, no number and nothing of what is inside.'), said('____ (what kind of thing) was found at ____ (where). Its owner can ask for it at ____ (where).')],
  medical: [
    done('Only when an administrator or the athletic trainer asks for it. All music and sponsor reads stop.'),
    said('Your attention, please. Would a doctor, nurse or paramedic please come to the scorer’s table.'),
  ],
};

/** A breath between two characters of a plate takes about as long as half a word. */
const WORDS_A_BREATH = 0.5;

/**
 * A plate as it is said: character by character, "zero" for the digit and "oh" for the letter, a breath between.
 *
 * @source common practice, no source
 */
export function spelledPlate(plate: string): string {
  return [...plate].map((one) => (one === '0' ? 'zero' : one === 'O' ? 'oh' : one)).join(', ');
}

/**
 * A request as it is read: the script of the packet with its blanks filled, or own words where there is none, where it has no
 * place for something that was asked, or where it would say a plate only once.
 *
 * @param wordsPerMinute of whoever reads, for the seconds of the words
 */
export function requestCue(
  request: { readonly kind: RequestKind; readonly fields: RequestFields },
  scripts: readonly RequestScript[],
  wordsPerMinute: number,
): { title: string; segments: readonly Segment[]; seconds: number } {
  const script = scripts.find((one) => one.kind === request.kind);
  const filled = script && fill(request.kind, request.fields, script.segments);
  const pieces = filled?.isWhole ? filled.pieces : fill(request.kind, request.fields, OWN_WORDS[request.kind]).pieces;
  const segments = pieces.map((piece) => segmentOf(piece, wordsPerMinute));
  return { title: script?.title ?? REQUEST_TITLES[request.kind], segments, seconds: segments.reduce((sum, { seconds }) => sum + seconds, 0) };
}

/** One line that tells requests of a list apart. */
export function requestLine(kind: RequestKind, fields: RequestFields): string {
  const parts = REQUEST_FORMS[kind].flatMap(({ key, form }) => (fields[key] ? [form === 'plate' ? `plate ${fields[key]}` : fields[key]] : []));
  return parts.length > 0 ? parts.join(' · ') : 'Fixed wording';
}

/** `__ __ __` is the place of a plate, `____ (where)` that of a field. */
const BLANK = /(__(?: __)+)|_{4,}(?:\s*\(([^()]{1,40})\))?/g;

function fill(kind: RequestKind, fields: RequestFields, pieces: readonly Piece[]): { pieces: Piece[]; isWhole: boolean } {
  const forms = REQUEST_FORMS[kind];
  const times = new Map<string, number>();
  let unsaid = [...forms];
  const next = (matches: (form: RequestField) => boolean): RequestField | undefined => {
    if (!unsaid.some(matches)) unsaid = [...forms];
    const found = unsaid.find(matches);
    if (!found) return undefined;
    unsaid = unsaid.filter((form) => form !== found);
    times.set(found.key, (times.get(found.key) ?? 0) + 1);
    return found;
  };
  const fillText = (text: string): string =>
    text.replace(BLANK, (blank: string, plate?: string, label?: string) => {
      const isNamed = label !== undefined && forms.some((form) => form.blank === label);
      const form = next((one) => (plate ? one.form === 'plate' : isNamed ? one.blank === label : one.form !== 'plate'));
      const value = form ? fields[form.key] : undefined;
      return form && value ? (form.form === 'plate' ? spelledPlate(value) : value) : blank;
    });
  const filled = pieces.map(({ kind: how, text }) => ({ kind: how, text: tidied(fillText(text)) }));
  const isWhole = forms.every((form) => (times.get(form.key) ?? 0) >= (form.form === 'plate' ? 2 : fields[form.key] ? 1 : 0));
  return { pieces: filled, isWhole };
}

/** What people write into a blank brings its own small words along; each is said once. */
const TIDYING: readonly (readonly [RegExp, string])[] = [
  [/([.!?])\.(?!\.)/g, '$1'],
  [/\bat (?=(?:in|at|by|on|near|behind|beside|between|outside|inside|next|across|along|under)\b)/gi, ''],
  [/\bon (?=(?:on|every|this|next|tomorrow|tonight|today)\b)/gi, ''],
  [/\ba (?=(?:a|an|the|my|our) )/gi, ''],
  [/\ba (?=[aeio](?!ne\b))/g, 'an '],
];

function tidied(filled: string): string {
  return TIDYING.reduce((text, [from, to]) => text.replace(from, to), filled).replace(/^\p{Ll}/u, (first) => first.toUpperCase());
}

function segmentOf({ kind, text }: Piece, wordsPerMinute: number): Segment {
  if (kind === 'direction') return { kind, text, sayAs: null, seconds: Number(/^pause (\d{1,3})/i.exec(text)?.[1] ?? 0) };
  const words = text.split(/\s+/).length + WORDS_A_BREATH * (text.match(/,/g)?.length ?? 0);
  return { kind, text, sayAs: null, seconds: Math.max(1, Math.ceil((words * 60) / wordsPerMinute)) };
}
