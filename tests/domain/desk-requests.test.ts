import { describe, expect, test } from 'vitest';
import type { RequestScript } from '../../server/domain/night/desk/bundle.ts';
import { mayNamePerson } from '../../server/domain/night/desk/requests/person-name.ts';
import { plainText, whyNotPlain } from '../../server/domain/night/desk/requests/plain-text.ts';
import { formNamesPerson, readForm } from '../../server/domain/night/desk/requests/request-form.ts';
import { REQUEST_MOVES, stateAfter, whyNotAnswer } from '../../server/domain/night/desk/requests/request-states.ts';
import { requestCue, requestLine, spelledPlate } from '../../server/domain/night/desk/requests/request-text.ts';
import { PUBLIC_REQUEST_KINDS, REQUEST_KINDS, REQUEST_STATES } from '../../server/domain/night/desk/requests/request.ts';
import type { KeptRequest, RequestAnswer, RequestAnswerKind } from '../../server/domain/night/desk/requests/request.ts';
import { approvedRequests } from '../../server/domain/night/desk/requests/requests-of-night.ts';
import type { Day } from '../../server/domain/day.ts';
import { requestsEndAt } from '../../server/domain/night/request-hours.ts';
import { waitSeconds } from '../../server/domain/night/request-limits.ts';
import { LIBRARY_TO_START_WITH } from '../../server/domain/packet/default-scripts.ts';
import { segmentsOf } from '../../server/domain/packet/segment.ts';
import { voiceAt } from '../../server/domain/packet/voice.ts';
import { aLog } from './night-log.ts';

const civic = { car: 'blue Honda Civic', where: 'the north entrance', plate: 'K70 OB2', wrong: 'the lights are on' };
const read = { car: 'blue Honda Civic', where: 'the north entrance', plate: 'K70OB2', wrong: 'the lights are on' };

describe('the form of a request', () => {
  test('it is kept as plain text, and a plate as capitals and digits', () => {
    expect(readForm('vehicle', { ...civic, plate: ' k70-ob2 ', wrong: ' the\u0007 lights\n are\u202E on ', extra: 'x' })).toEqual({ fields: read, sentences: {} });
  });

  test.each([
    ['vehicle', 'wrong'], ['fundraiser', 'day'], ['foundItem', 'askAt'], ['other', 'text'],
  ] as const)('a name may stand in %s, %s', (kind, key) => {
    expect([formNamesPerson(kind, { [key]: 'ask Coach Xochitl Marlowe' }), formNamesPerson(kind, { [key]: 'the ticket table' })]).toEqual([true, false]);
  });

  test.each([
    ['plate', 'ABCD1234', null],
    ['plate', 'ABCD12345', 'has at most 8 characters'],
    ['plate', 'ABC*123', 'has only letters and digits'],
    ['plate', '', 'is missing'],
    ['car', 'x'.repeat(60), null],
    ['car', 'x'.repeat(61), 'has at most 60 characters'],
    ['car', '\u0000\u200B', 'is missing'],
    ['wrong', '<b>lights</b>', 'has a sign that cannot be read out; write it in words'],
    ['wrong', 'see www.lights.example', 'has a web or mail address; say where to ask instead'],
    ['where', 7, 'is missing'],
  ])('vehicle, %s %j: %s', (key, value, sentence) => {
    expect(readForm('vehicle', { ...civic, [key]: value }).sentences[key] ?? null).toBe(sentence);
  });

  test('a child that waits and a doctor that is needed have fixed words and no field', () => {
    expect(readForm('lostChild', { text: 'a boy in red' })).toEqual({ fields: {}, sentences: {} });
    expect(readForm('medical', { text: 'row 4' })).toEqual({ fields: {}, sentences: {} });
    expect(REQUEST_KINDS.filter((kind) => !(PUBLIC_REQUEST_KINDS as readonly string[]).includes(kind))).toEqual(['lostChild', 'foundItem', 'medical']);
  });
});

describe('plain text', () => {
  test.each([
    ['Tickets are $5.', null],
    ['Meet at 6:30 p.m. in St. Ann’s hall.', null],
    ['5 < 6', 'sign'],
    ['[[pause 600]]', 'sign'],
    ['{{ venue }}', 'sign'],
    ['go to HTTP://x.example', 'address'],
    ['javascript://x', 'address'],
    ['kestrels.org', 'address'],
    ['ask me@school.example', 'address'],
    ['…!!', 'no words'],
  ])('%j: %s', (text, problem) => (problem === null ? expect(whyNotPlain(text)).toBeNull() : expect(whyNotPlain(text)).toContain(problem)));

  test('what cannot be seen is taken out and letters are composed', () => expect(plainText('\u202Ecafe\u0301\u0000 \t now\u2028')).toBe('café now'));

  test('a very long text of one kind of sign takes no long time', () => {
    for (const sign of ['a', '.', '@', '-', 'www.', '://']) expect(typeof whyNotPlain(sign.repeat(20_000))).toMatch(/string|object/);
  });
});

describe('a person who may be named', () => {
  test.each([
    ['Happy birthday from all of us', true],
    ['Thank you to Coach Ruiz', true],
    ['Congratulations to Ana Delgado-Reyes', true],
    ['the Band Boosters hold a Pancake Breakfast', false],
    ['a car wash on Saturday in the North Lot', false],
    ['Kestrel Boosters', false],
  ])('%j: %s', (text, may) => expect(mayNamePerson(text)).toBe(may));
});

describe('the words of a request', () => {
  const voice = voiceAt(140);
  const scripts: RequestScript[] = (['vehicleNotice', 'foundItem', 'fundraiser'] as const).map((moment) => {
    const { title, text } = LIBRARY_TO_START_WITH.find((one) => one.moment === moment)!;
    return { kind: moment === 'vehicleNotice' ? 'vehicle' : moment, title, isTableOnly: moment === 'foundItem', segments: segmentsOf(text, voice) };
  });
  const saidBy = (kind: Parameters<typeof requestCue>[0]['kind'], fields: Record<string, string>, of: readonly RequestScript[]) =>
    requestCue({ kind, fields }, of, 140).segments.filter((one) => one.kind === 'spoken').map((one) => one.text).join(' ');

  test.each([['K70OB2', 'K, 7, zero, oh, B, 2'], ['0', 'zero'], ['O', 'oh'], ['1AB/2', '1, A, B, /, 2']])('plate %s is said %s', (plate, said) => expect(spelledPlate(plate)).toBe(said));

  test.each([['the script of the packet', scripts], ['own words', []]])('by %s, a car is told twice with its plate spelled twice', (_, of) => {
    const said = saidBy('vehicle', read, of);
    expect(said.match(/K, 7, zero, oh, B, 2/g)).toHaveLength(2);
    expect(said.match(/blue Honda Civic/g)).toHaveLength(2);
    expect(said.match(/at the north entrance/g)).toHaveLength(2);
    expect(said.match(/the lights are on/g)).toHaveLength(2);
    expect(said).not.toMatch(/__|\(/);
  });

  test('a script that would say the plate once only, or has no place for it, is not used', () => {
    const once: RequestScript = { kind: 'vehicle', title: 'Car', isTableOnly: false, segments: [{ kind: 'spoken', text: 'A ____ (color and make) at ____ (where), plate __ __: ____ (what is wrong).', sayAs: null, seconds: 5 }] };
    expect(saidBy('vehicle', read, [once]).match(/K, 7, zero/g)).toHaveLength(2);
  });

  test('two blanks of one name are filled in their order', () => {
    expect(saidBy('foundItem', { thing: 'a set of keys', where: 'the north bleachers', askAt: 'the scorer’s table' }, scripts)).toBe(
      'A set of keys was found at the north bleachers. Its owner can ask for it at the scorer’s table.',
    );
  });

  test.each([
    [{ car: 'orange Jeep', where: 'by the gate' }, 'a', 'an orange Jeep), parked by the gate'],
    [{ car: 'a red van', where: 'in row 3' }, 'a', 'a red van), parked in row 3'],
  ])('small words are said once: %j', (fields, _, expected) => {
    expect(saidBy('vehicle', { ...read, ...fields }, [])).toContain(expected.replace(')', ''));
  });

  test('music is played, not said', () => {
    expect(requestCue({ kind: 'music', fields: { title: 'River Song', artist: 'The Millers' } }, [], 140).segments).toEqual([
      { kind: 'direction', text: 'Play “River Song” by The Millers at the next break.', sayAs: null, seconds: 0 },
    ]);
  });

  test('text of a form is never taken for a direction', () => {
    expect(requestCue({ kind: 'other', fields: { text: '[[pause 600]]' } }, [], 140).seconds).toBeLessThan(5);
  });

  test('one line tells requests apart', () => expect([requestLine('vehicle', read), requestLine('medical', {})]).toEqual(['blue Honda Civic · the north entrance · plate K70OB2 · the lights are on', 'Fixed wording']));
});

const answered = (answer: RequestAnswerKind, more: Partial<RequestAnswer> = {}): RequestAnswer => ({
  answer, reason: answer === 'declined' ? 'no time' : null, nameAllowedBy: null, wordsChecked: false, entryId: null, answeredAt: '2026-12-05T02:00:00Z', answeredByName: null, ...more,
});

describe('the moves of a request', () => {
  const allowed = REQUEST_MOVES.map(({ from, to }) => `${from} → ${to}`);

  test('there are five, and every request ends as read, declined or expired', () => {
    expect(allowed).toEqual(['waiting → approved', 'waiting → declined', 'waiting → expired', 'approved → read', 'approved → expired']);
  });

  test.each(REQUEST_STATES.flatMap((from) => REQUEST_STATES.filter((to) => to !== 'waiting').map((to) => [from, to] as const)))('%s → %s', (from, to) => {
    const no = whyNotAnswer({ state: from, kind: 'vehicle', namesPerson: false }, answered(to as RequestAnswerKind));
    expect(no).toBe(allowed.includes(`${from} → ${to}`) ? null : 'request-answered-already');
  });

  test.each([
    ['a name without the director', { kind: 'other', namesPerson: true }, answered('approved'), 'request-names-person'],
    ['a name that the director allowed', { kind: 'other', namesPerson: true }, answered('approved', { nameAllowedBy: 'Ms. Okafor' }), null],
    ['a name that is declined', { kind: 'other', namesPerson: true }, answered('declined'), null],
    ['a song nobody has read', { kind: 'music', namesPerson: false }, answered('approved'), 'request-words-unchecked'],
    ['a song that was read', { kind: 'music', namesPerson: false }, answered('approved', { wordsChecked: true }), null],
    ['declined without a word', { kind: 'other', namesPerson: false }, answered('declined', { reason: ' ' }), 'request-declined-without-reason'],
  ] as const)('%s', (_, request, answer, refusal) => expect(whyNotAnswer({ state: 'waiting', ...request }, answer)).toBe(refusal));

  test('what the server let expire gives way to an answer that comes later, and to none that is not allowed', () => {
    const request = { kind: 'vehicle', namesPerson: false } as const;
    const byEntry = { entryId: 'e1' };
    expect(stateAfter(request, [answered('approved'), answered('expired'), answered('read', byEntry)])).toBe('read');
    expect(stateAfter(request, [answered('expired'), answered('read', byEntry)])).toBe('expired');
    expect(stateAfter(request, [answered('approved'), answered('expired', byEntry), answered('read', { entryId: 'e2' })])).toBe('expired');
    expect(stateAfter(request, [answered('expired'), answered('approved', byEntry), answered('read', { entryId: 'e2' })])).toBe('read');
  });

  test('an answer that is not allowed changes nothing', () => {
    expect(stateAfter({ kind: 'vehicle', namesPerson: false }, [answered('read'), answered('approved'), answered('declined'), answered('read'), answered('approved')])).toBe('read');
  });
});

describe('the requests of a night', () => {
  const asked = { id: 'car', kind: 'request', detail: { requestKind: 'vehicle', fields: civic } } as const;
  const approved = { id: 'yes', kind: 'requestAnswered', detail: { requestId: 'car', answer: 'approved' } } as const;
  const wasRead = { id: 'done', kind: 'requestAnswered', detail: { requestId: 'car', answer: 'read' } } as const;
  const taken = (id: string) => ({ id: `not-${id}`, kind: 'takenBack', takesBackEntryId: id }) as const;
  const stands = (...entries: Parameters<typeof aLog>) => {
    const night = approvedRequests(aLog(...entries), []);
    return [night.waiting, night.approved, night.ended].map((list) => list.map(({ id, state }) => `${id} ${state}`));
  };

  test.each([
    ['asked', [asked], [['car waiting'], [], []]],
    ['approved', [asked, approved], [[], ['car approved'], []]],
    ['read', [asked, approved, wasRead], [[], [], ['car read']]],
    ['read by a slip', [asked, approved, wasRead, taken('done')], [[], ['car approved'], []]],
    ['approved by a slip', [asked, approved, taken('yes')], [['car waiting'], [], []]],
    ['asked by a slip', [asked, approved, taken('car')], [[], [], []]],
    ['read before it was approved', [asked, wasRead], [['car waiting'], [], []]],
    ['answered twice by two devices', [asked, approved, { ...approved, id: 'too', deviceId: 'phone', detail: { requestId: 'car', answer: 'declined' }, reason: 'no' }], [[], ['car approved'], []]],
    ['a kind nobody knows', [{ ...asked, detail: { requestKind: 'x' } }], [[], [], []]],
    ['an answer to nothing', [approved], [[], [], []]],
  ] as const)('%s', (_, entries, expected) => expect(stands(...entries)).toEqual(expected));

  const kept: KeptRequest = { id: 'car', source: 'public', kind: 'vehicle', fields: read, askedAt: '2026-12-05T01:00:00Z', answers: [] };

  test('one from the public form is approved and read on the device, with the server gone', () => {
    expect(approvedRequests(aLog(approved), [kept]).approved.map(({ id }) => id)).toEqual(['car']);
    expect(approvedRequests(aLog(approved, wasRead), [kept]).ended.map(({ state }) => state)).toEqual(['read']);
  });

  test('what the server has of the device is not answered twice, and what was taken back is gone from both', () => {
    const known = { ...kept, answers: [answered('approved', { entryId: 'yes' })] };
    expect(approvedRequests(aLog(approved), [known]).approved[0]!.answers).toHaveLength(1);
    expect(approvedRequests(aLog(approved, taken('yes')), [known]).waiting).toHaveLength(1);
  });

  test('what is still open at sign-off has expired', () => {
    const night = approvedRequests(aLog(asked, approved), [{ ...kept, id: 'other' }], true);
    expect([night.waiting, night.approved]).toEqual([[], []]);
    expect(night.ended.map(({ state }) => state)).toEqual(['expired', 'expired']);
  });
});

describe('how many requests are taken', () => {
  const asked = (...secondsAgo: number[]) => secondsAgo.map((one) => ({ secondsAgo: one, isSameAddress: true }));
  const many = (count: number, isSameAddress: boolean) => Array.from({ length: count }, (_, place) => ({ secondsAgo: 100 + place, isSameAddress }));

  test.each([
    ['nothing came yet', [], 0],
    ['seven from one address', many(7, true), 0],
    ['eight from one address: until the first of them is ten minutes old', many(8, true), 493],
    ['eight, the first of them ten minutes ago', asked(1, 2, 3, 4, 5, 6, 7, 600), 0],
    ['twenty-nine from others', many(29, false), 0],
    ['thirty from others', many(30, false), 471],
    ['eight from one and twenty-two from others: the longer wait', [...many(8, true), ...many(22, false)], 493],
  ])('%s', (_, lately, seconds) => expect(waitSeconds(lately)).toBe(seconds));

  test('the form closes three hours after midnight on the wall of the venue', () => {
    expect(requestsEndAt('2026-12-04' as Day, 'America/Denver')).toBe('2026-12-05T09:59:00.000Z');
  });
});
