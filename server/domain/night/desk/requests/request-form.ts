import { plainText, whyNotPlain } from './plain-text.ts';
import { mayNamePerson } from './person-name.ts';
import type { RequestFields, RequestKind } from './request.ts';

/** A field of a request's form. */
export interface RequestField {
  readonly key: string;
  readonly label: string;
  /** what belongs there, shown beside it */
  readonly hint: string;
  readonly mostCharacters: number;
  readonly isRequired: boolean;
  /** how a script names the blank that it fills: "____ (where)" */
  readonly blank: string;
  readonly form: 'line' | 'lines' | 'plate';
  /** somebody could be named in it */
  readonly mayHoldName: boolean;
  /** what is asked for most often, for one tap */
  readonly usual: readonly string[];
}

type More = Partial<Pick<RequestField, 'isRequired' | 'form' | 'mayHoldName' | 'usual'>>;

const field = (key: string, label: string, hint: string, mostCharacters: number, blank: string, more: More = {}): RequestField => ({
  key, label, hint, mostCharacters, blank, isRequired: true, form: 'line', mayHoldName: false, usual: [], ...more,
});

/** The longest plate of a state has eight characters. @source AAMVA survey of 58 jurisdictions, MOVE magazine, June 2012 */
export const LONGEST_PLATE = 8;

const WRONG_WITH_CARS = ['the lights are on', 'it blocks the way', 'a window is open', 'the alarm is going', 'it is about to be towed'];

/** What each kind asks for, in the order in which it is said. A kind without fields has fixed words. @source common practice, no source */
export const REQUEST_FORMS: Readonly<Record<RequestKind, readonly RequestField[]>> = {
  vehicle: [
    field('car', 'Color and make', 'Such as blue Honda Civic', 60, 'color and make'),
    field('where', 'Where it is parked', 'Such as the north entrance', 80, 'where'),
    field('plate', 'License plate', 'Letters and digits', LONGEST_PLATE, 'plate', { form: 'plate' }),
    field('wrong', 'What is wrong', 'What the owner has to see to', 100, 'what is wrong', { mayHoldName: true, usual: WRONG_WITH_CARS }),
  ],
  fundraiser: [
    field('group', 'Group or club', 'Such as the band boosters', 80, 'group', { mayHoldName: true }),
    field('what', 'What it is', 'Such as a pancake breakfast', 100, 'what', { mayHoldName: true }),
    field('day', 'Day and time', 'Such as Saturday from 7 to 10 in the morning', 60, 'day', { mayHoldName: true }),
    field('where', 'Where', 'Such as the cafeteria', 80, 'where', { mayHoldName: true }),
    field('purpose', 'What the money is for', 'Such as new uniforms', 100, 'what for', { mayHoldName: true }),
  ],
  music: [
    field('title', 'Title of the song', 'As it is written on the recording', 100, 'title'),
    field('artist', 'Artist', 'Who plays it', 80, 'artist'),
  ],
  other: [field('text', 'The words to be read', 'One or two sentences', 280, 'text', { form: 'lines', mayHoldName: true })],
  lostChild: [],
  foundItem: [
    field('thing', 'What kind of thing', 'Such as a set of keys', 40, 'what kind of thing', { mayHoldName: true }),
    field('where', 'Where it was found', 'Such as the north bleachers', 80, 'where'),
    field('askAt', 'Where its owner asks', 'Where it is kept', 80, 'where', { mayHoldName: true, usual: ['the scorer’s table', 'the ticket table', 'the main office'] }),
  ],
  medical: [],
};

export type FieldSentences = Record<string, string>;

/** A plate as it is stored: capitals and digits, without spaces, hyphens, dots and slashes. */
export function plateOf(raw: string): string {
  return plainText(raw).toUpperCase().replace(/[\s\-–—./·]/gu, '');
}

/** A field's text as it is kept. */
export function fieldText(form: RequestField, raw: string): string {
  return form.form === 'plate' ? plateOf(raw) : plainText(raw);
}

/** What is wrong with a field, in words that follow its name; null for none. */
export function whyNotField(form: RequestField, text: string): string | null {
  if (text === '') return form.isRequired ? 'is missing' : null;
  if (form.form === 'plate' && !/^[A-Z0-9]+$/.test(text)) return 'has only letters and digits';
  if (text.length > form.mostCharacters) return `has at most ${form.mostCharacters} characters`;
  return form.form === 'plate' ? null : whyNotPlain(text);
}

/**
 * The form of a request as it is kept, with a sentence for each field that cannot be taken.
 * Fields that the kind does not ask for are left out.
 */
export function readForm(kind: RequestKind, raw: Readonly<Record<string, unknown>>): { fields: RequestFields; sentences: FieldSentences } {
  const fields: Record<string, string> = {};
  const sentences: FieldSentences = {};
  for (const form of REQUEST_FORMS[kind]) {
    const value = raw[form.key];
    const text = typeof value === 'string' ? fieldText(form, value) : '';
    const sentence = whyNotField(form, text);
    if (sentence) sentences[form.key] = sentence;
    if (text !== '') fields[form.key] = text;
  }
  return { fields, sentences };
}

/** Whether something in the form may be a person's name. Rather once too often: it only asks for the director's word. */
export function formNamesPerson(kind: RequestKind, fields: RequestFields): boolean {
  return REQUEST_FORMS[kind].some(({ key, mayHoldName }) => mayHoldName && mayNamePerson(fields[key] ?? ''));
}
