import { describe, expect, test } from 'vitest';
import type { Day } from '../../server/domain/day.ts';
import { callList, weekOf } from '../../server/domain/sponsorship/call-list.ts';
import type { CallFacts, CallReason } from '../../server/domain/sponsorship/call-list.ts';
import { afterContact } from '../../server/domain/sponsorship/contact.ts';

const day = (text: string) => text as Day;
const step = (on: string | null): CallReason => ({ kind: 'nextStep', on: on as Day | null, text: 'Ask about the game ball' });
const lapses = (on: string): CallReason => ({ kind: 'offerLapses', on: day(on), offerId: 'offer', title: 'Season offer', number: 'O-1' });
const ends = (on: string): CallReason => ({ kind: 'contractEnds', on: day(on), contractId: 'contract', title: 'Game balls', number: 'C-1' });
const sponsor = (sponsorName: string, reasons: CallReason[], lastContactOn: string | null = null): CallFacts => ({ sponsorId: sponsorName, sponsorName, lastContactOn: lastContactOn as Day | null, reasons });

/** December 2 is a Wednesday; its week is November 30 through December 6. */
const TODAY = day('2026-12-02');
const WEEK = weekOf(TODAY);
const groups = (facts: CallFacts[], week = WEEK) => callList(facts, week, TODAY).map((call) => `${call.sponsorId}: ${call.group}`);

describe('a week', () => {
  test.each([
    ['2026-11-29', '2026-11-23', '2026-11-29'],
    ['2026-11-30', '2026-11-30', '2026-12-06'],
    ['2026-12-06', '2026-11-30', '2026-12-06'],
    ['2027-01-01', '2026-12-28', '2027-01-03'],
  ])('of %s is Monday %s through Sunday %s', (on, from, through) => {
    expect(weekOf(day(on))).toEqual({ from, through });
  });
});

describe('whom to call this week', () => {
  test.each([
    ['due the day before today is overdue', step('2026-12-01'), ['Copperline: overdue']],
    ['due today is of this week', step('2026-12-02'), ['Copperline: thisWeek']],
    ['due on Sunday is of this week', step('2026-12-06'), ['Copperline: thisWeek']],
    ['due on Monday after is not yet called', step('2026-12-07'), []],
    ['a step without a day waits for one', step(null), ['Copperline: noDay']],
    ['an offer that lapses in seven days is called about', lapses('2026-12-09'), ['Copperline: thisWeek']],
    ['an offer that lapses in eight days is not', lapses('2026-12-10'), []],
    ['an offer that lapses today is called about today', lapses('2026-12-02'), ['Copperline: thisWeek']],
    ['an offer that lapsed yesterday is not called about', lapses('2026-12-01'), []],
    ['a contract that ends stands at the end', ends('2027-03-13'), ['Copperline: ending']],
  ])('%s', (_name, reason, expected) => {
    expect(groups([sponsor('Copperline', [reason])])).toEqual(expected);
  });

  test('a sponsor with nothing to call about is not in the list', () => {
    expect(groups([sponsor('Copperline', [])])).toEqual([]);
  });

  test('what is overdue comes first, then the days of the week, then what has no day, last the contracts that end', () => {
    const facts = [sponsor('Ends', [ends('2027-03-13')]), sponsor('NoDay', [step(null)]), sponsor('Friday', [step('2026-12-04')]), sponsor('Late', [step('2026-11-20')]), sponsor('Thursday', [lapses('2026-12-03')]), sponsor('Later', [step('2026-11-27')])];
    expect(callList(facts, WEEK, TODAY).map((call) => call.sponsorId)).toEqual(['Late', 'Later', 'Thursday', 'Friday', 'NoDay', 'Ends']);
  });

  test('of one day, who was not spoken to for longest comes first, and never comes before ever', () => {
    const facts = [sponsor('Lately', [step('2026-12-03')], '2026-12-01'), sponsor('Long', [step('2026-12-03')], '2026-09-01'), sponsor('Never', [step('2026-12-03')])];
    expect(callList(facts, WEEK, TODAY).map((call) => call.sponsorId)).toEqual(['Never', 'Long', 'Lately']);
  });

  test('a sponsor stands in the list once, by the soonest of its reasons', () => {
    const [call, ...others] = callList([sponsor('Snowmelt', [ends('2027-03-13'), lapses('2026-12-08'), step('2026-12-04')])], WEEK, TODAY);
    expect([call!.group, call!.on, call!.reasons.map((reason) => reason.kind), others]).toEqual(['thisWeek', '2026-12-04', ['nextStep', 'offerLapses', 'contractEnds'], []]);
  });

  test.each([
    ['of the week after, what is due before it begins is overdue by then', '2026-12-07', ['A: overdue', 'B: overdue', 'C: thisWeek']],
    ['of the week before, all that was due is overdue', '2026-11-29', ['A: overdue']],
  ])('%s', (_name, asked, expected) => {
    expect(groups([sponsor('A', [step('2026-11-24')]), sponsor('B', [step('2026-12-06')]), sponsor('C', [step('2026-12-07')])], weekOf(day(asked)))).toEqual(expected);
  });
});

describe('a contact that is written down', () => {
  const before = { lastContactOn: day('2026-11-20'), nextStep: 'Send the rate card', nextStepOn: day('2026-11-30') };
  const contact = (contactedOn: string, nextStep: string | null = null, nextStepOn: string | null = null) => ({ contactedOn: day(contactedOn), nextStep, nextStepOn: nextStepOn as Day | null });

  test.each([
    ['takes the step that was due away', contact('2026-12-02'), { lastContactOn: '2026-12-02', nextStep: null, nextStepOn: null }],
    ['puts the next one in its place', contact('2026-12-02', 'Visit the store', '2026-12-09'), { lastContactOn: '2026-12-02', nextStep: 'Visit the store', nextStepOn: '2026-12-09' }],
    ['leaves the step alone where a later contact is known', contact('2026-11-19'), before],
    ['names a new step even so', contact('2026-11-19', 'Visit the store'), { lastContactOn: '2026-11-20', nextStep: 'Visit the store', nextStepOn: null }],
  ])('%s', (_name, written, expected) => {
    expect(afterContact(before, written, TODAY)).toEqual(expected);
  });

  test.each([
    ['today', contact('2026-12-02', 'Visit', '2026-12-02'), null],
    ['after today', contact('2026-12-03'), 'contact-after-today'],
    ['before its own day', contact('2026-12-02', 'Visit', '2026-12-01'), 'next-step-before-contact'],
  ])('is refused where it lies %s only if that cannot be', (_name, written, code) => {
    const write = () => afterContact(before, written, TODAY);
    if (code === null) expect(write).not.toThrow();
    else expect(write).toThrow(expect.objectContaining({ code }));
  });
});
