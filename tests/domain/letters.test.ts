import { describe, expect, test } from 'vitest';
import { creditMemoLetter, invoiceLetter, receiptLetter, reminderLetter, statementLetter } from '../../server/domain/billing/letters/document-letters.ts';
import { isMailAddress, oneLine, onceKeyOf } from '../../server/domain/billing/letters/letter.ts';
import { reminderDue, whyNoReminder } from '../../server/domain/billing/letters/reminders.ts';
import { thankYouLetter } from '../../server/domain/billing/letters/thank-you-letter.ts';
import type { Thanks } from '../../server/domain/billing/letters/thank-you-letter.ts';
import { outcomeOf } from '../../server/platform/mail/mail.ts';
import { amountText, dayText } from '../../server/platform/typesetting/amount-text.ts';

const write = { amount: (cents: number) => amountText(cents, 'en-US', 'USD'), day: (day: string) => dayText(day, 'en-US') };
const SELLER = { name: 'Tamarack Ridge Athletics', contactName: 'Ottoline Brandt', contactPhone: '(303) 555-0142', contactEmail: 'office@tamarack.example' };
const INVOICE = {
  number: 'TR-2027-0001', payerName: 'Juniper & Pike Hardware', what: 'Game balls', purchaseOrderNumber: 'PO 4471', dueOn: '2026-12-31',
  grossCents: 73_500, balanceCents: 73_500, hasCopy: true,
};

describe('the letter with an invoice', () => {
  test('says what, how much, by when, and is signed by the seller of record', () => {
    expect(invoiceLetter(INVOICE, SELLER, write)).toEqual({
      subject: 'Invoice TR-2027-0001 from Tamarack Ridge Athletics',
      body: [
        'Hello Juniper & Pike Hardware,',
        'Attached is invoice TR-2027-0001 for Game balls: $735.00, due December 31, 2026.',
        'Your purchase order: PO 4471',
        'Where to pay stands on the invoice. Please write TR-2027-0001 on the payment.',
        'If something on it is not right, please answer this letter.',
        'Ottoline Brandt\nTamarack Ridge Athletics\n(303) 555-0142 · office@tamarack.example',
      ].join('\n\n'),
    });
  });

  test('says what is still open once a part was paid', () => {
    expect(invoiceLetter({ ...INVOICE, balanceCents: 1 }, SELLER, write).body).toContain('$0.01 of it is still open.');
  });

  test('writes amounts and days as the department does', () => {
    const spanish = { amount: (cents: number) => amountText(cents, 'es-US', 'USD'), day: (day: string) => dayText(day, 'es-US') };
    expect(invoiceLetter(INVOICE, SELLER, spanish).body).toContain('31 de diciembre de 2026');
  });
});

test.each([
  [1, 'one day ago'],
  [2, '2 days ago'],
])('a reminder %i day past due says %s', (days, words) => {
  const { body } = reminderLetter(INVOICE, days, SELLER, write);
  expect(body).toContain(words);
  expect(body).toContain('If your payment is on its way already, thank you');
  expect(body).toContain('A copy is attached.');
});

test('a reminder of what was billed before the start says nothing of a copy', () => {
  const { body } = reminderLetter({ ...INVOICE, balanceCents: 3_500, hasCopy: false }, 7, SELLER, write);
  expect(body).not.toContain('attached');
  expect(body).toContain('$35.00 of $735.00 is still open.');
});

test('credit memo, receipt and statement say their number, their amount and their days', () => {
  const memo = creditMemoLetter({ number: 'TR-CM-2027-0001', payerName: 'Juniper', issuedOn: '2027-02-15', grossCents: 7_041, reason: 'Two reads were not given', creditsNumber: 'TR-2027-0002' }, SELLER, write);
  expect(memo.body).toContain('credit memo TR-CM-2027-0001 of February 15, 2027: $70.41 in your favor, on invoice TR-2027-0002.');
  const receipt = receiptLetter({ number: 'TR-R-2027-0004', fromWhom: 'Hazel Juniper', takenOn: '2026-12-04', amountCents: 10_000, how: 'check 1041', whatFor: null }, SELLER, write);
  expect(receipt.body).toContain('We received $100.00 (check 1041) from you on December 4, 2026. Receipt TR-R-2027-0004 is attached.');
  const statement = (openCents: number) => statementLetter({ sponsorName: 'Juniper', from: '2026-11-01', to: '2026-11-30', openCents }, { name: 'Kestrels' }, write).body;
  expect(statement(0)).toContain('Nothing is open today.');
  expect(statement(1)).toContain('$0.01 is open today.');
});

const THANKS: Thanks = {
  toName: 'Hazel Juniper', sponsorName: 'Juniper & Pike Hardware', departmentName: 'Tamarack Ridge Athletics', seasonName: 'Basketball 2026-27', contractTitle: 'Game balls',
  asOf: '2027-03-14', reads: [{ kind: 'Sponsored game ball', count: 6 }], benefits: [{ name: 'Banner at the Perch', count: 1 }], paidCents: 70_000,
  goods: [{ what: 'Twelve game balls', receivedOn: '2026-12-01' }],
};

describe('the letter of thanks', () => {
  test('names what was paid, the goods without a value, and each benefit given in return', () => {
    const { body } = thankYouLetter(THANKS, SELLER, write);
    expect(body).toContain('Dear Hazel Juniper,');
    expect(body).toContain('By March 14, 2027 you had paid $700.00.');
    expect(body).toContain('You gave in goods:\n- Twelve game balls, received December 1, 2026');
    expect(body).toContain('In return you were given by then:\n- Sponsored game ball: 6\n- Banner at the Perch: 1');
    expect(body.match(/\$/g)).toHaveLength(1);
  });

  test('never says that something is deductible, nor that nothing was given in return', () => {
    const { body } = thankYouLetter({ ...THANKS, reads: [], benefits: [], goods: [], paidCents: 0 }, SELLER, write);
    expect(body).toContain('This letter is not tax advice; the amount of any deductible part is for your tax adviser.');
    expect(body).not.toMatch(/no goods or services|tax.deductible|charitable/i);
    expect(body).not.toContain('In return');
  });
});

describe('a line of a header', () => {
  test.each([
    ['Juniper\r\nBcc: all@port-ansel.example', 'Juniper Bcc: all@port-ansel.example'],
    ['Juniper\n\nHello', 'Juniper Hello'],
    ['Juniper\u2028Bcc: x', 'Juniper Bcc: x'],
    ['Juniper\u0000\u0085\u000bPike', 'Juniper Pike'],
    ['  Juniper  & Pike ', 'Juniper & Pike'],
  ])('%j becomes %j', (text, line) => {
    expect(oneLine(text)).toBe(line);
  });

  test('of every letter is one line, whatever the names hold', () => {
    const evil = 'A\r\nBcc: all@port-ansel.example';
    const seller = { name: evil, contactName: evil };
    const letters = [
      invoiceLetter({ ...INVOICE, number: evil, payerName: evil, what: evil }, seller, write), reminderLetter({ ...INVOICE, number: evil }, 7, seller, write),
      thankYouLetter({ ...THANKS, toName: evil, sponsorName: evil }, seller, write), statementLetter({ sponsorName: evil, from: '2026-11-01', to: '2026-11-30', openCents: 0 }, seller, write),
    ];
    for (const { subject } of letters) expect(subject).not.toMatch(/[\r\n]/);
    for (const { body } of letters) expect(body).not.toContain('\r');
  });
});

// WHATWG HTML, valid e-mail address; RFC 5321 4.5.3.1: 64 characters before the sign, 254 in all.
test.each([
  ['hazel@juniper.example', true],
  ["o'brien+bills@juniper-pike.example", true],
  [`${'a'.repeat(64)}@juniper.example`, true],
  [`${'a'.repeat(65)}@juniper.example`, false],
  ['hazel@juniper', false],
  ['hazel@juniper..example', false],
  ['hazel@-juniper.example', false],
  ['a@x.example,b@y.example', false],
  ['<hazel@juniper.example>', false],
  ['hazel@juniper.example\r\nRCPT TO:<all@port-ansel.example>', false],
  ['hazel @juniper.example', false],
])('%j is an address: %s', (address, isOne) => {
  expect(isMailAddress(address)).toBe(isOne);
});

test('two letters about one thing have two keys, and the second sending has its own', () => {
  const keys = [onceKeyOf('reminder', 'a', [7], 1), onceKeyOf('reminder', 'a', [30], 1), onceKeyOf('reminder', 'a', [7], 2), onceKeyOf('invoice', 'a', [], 1), onceKeyOf('invoice', 'a', [], 2)];
  expect(new Set(keys).size).toBe(keys.length);
  expect(keys[0]).toBe('reminder:a:7');
});

describe('the reminder of the day', () => {
  const USUAL = [7, 30, 60];
  test.each([
    [6, USUAL, [], null],
    [7, USUAL, [], 7],
    [13, USUAL, [], 7],
    [14, USUAL, [], null],
    [13, USUAL, [7], null],
    [29, USUAL, [7], null],
    [30, USUAL, [7], 30],
    [30, USUAL, [], 30],
    [36, USUAL, [7, 30], null],
    [60, USUAL, [7, 30], 60],
    [67, USUAL, [7, 30], null],
    [400, USUAL, [], null],
    [7, [], [], null],
    [0, [1], [], null],
    [1, [1], [], 1],
    [8, [8, 7], [], 8],
    [9, [8, 7], [8], null],
  ])('%i days past due, at %j, after %j written, is %j', (daysPastDue, days, written, due) => {
    expect(reminderDue(daysPastDue, days, written)).toBe(due);
  });

  test('does not go by itself for a held contract, for what was taken over, or to nobody', () => {
    const fine = { address: 'bills@juniper.example', isHeld: false, isTakenOver: false };
    expect(whyNoReminder(fine)).toBeNull();
    for (const change of [{ address: null }, { isHeld: true }, { isTakenOver: true }]) expect(whyNoReminder({ ...fine, ...change })).not.toBeNull();
  });
});

// RFC 5321, 4.2.1: 4yz may be tried again, 5yz not; RFC 4954: 535 is about who signs in.
test.each([
  [{ code: 'EENVELOPE', responseCode: 550, response: '550 No such mailbox' }, false, 'refused'],
  [{ code: 'EMESSAGE', responseCode: 554, response: '554 Spam' }, true, 'refused'],
  [{ code: 'EENVELOPE', responseCode: 450, response: '450 Busy' }, false, 'failed'],
  [{ code: 'EENVELOPE', responseCode: 499, response: '499 Later' }, false, 'failed'],
  [{ code: 'EENVELOPE', responseCode: 500, response: '500 No' }, false, 'refused'],
  [{ code: 'EAUTH', responseCode: 535, response: '535 Wrong password' }, false, 'failed'],
  [{ code: 'ECONNECTION' }, false, 'failed'],
  [{ code: 'ESOCKET' }, true, 'failed'],
])('%j comes to: %s %s', (failure, wasRead, kind) => {
  const outcome = outcomeOf(Object.assign(new Error('it failed'), failure), wasRead);
  expect(outcome.kind).toBe(kind);
  if (outcome.kind === 'failed') expect(outcome.mayHaveArrived).toBe(wasRead);
});
