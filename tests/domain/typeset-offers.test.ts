import { afterAll, beforeAll, expect, test, vi } from 'vitest';
import { dayOf } from '../../server/domain/day.ts';
import type { OfferSheet, OfferSheetLine } from '../../server/platform/typesetting/offer-sheet.ts';
import { Typesetter } from '../../server/platform/typesetting/typesetter.ts';
import { read } from './packet-print.ts';
import { builtWorker } from './packet-typesetter.ts';

vi.setConfig({ testTimeout: 60_000 });

let typesetter: Typesetter;
beforeAll(async () => {
  typesetter = new Typesetter({ workerFile: await builtWorker('offers'), limitMilliseconds: 60_000 });
}, 90_000);
afterAll(() => typesetter.close());

const line = (extra: Partial<OfferSheetLine> = {}): OfferSheetLine => ({
  name: 'Sponsored game ball', counting: 'perTerm', quantity: 6, readsAtLeast: null, readsAtMost: null, per: 'read', each: [{ count: 2, cents: 6819 }, { count: 4, cents: 6818 }], valueCents: 40_910, isPricedByRead: false,
  teams: [], levels: [], windows: [], startsOn: null, endsOn: null, blackoutDays: [], pinned: [], leastPerGame: null, mostPerGame: null, dueOn: null, ...extra,
});

const offer = (extra: Partial<OfferSheet> = {}): OfferSheet => ({
  number: 'O-2027-0003', title: 'Game balls and concession reads', paper: 'letter', locale: 'en-US', currency: 'USD', departmentName: 'Tamarack Ridge Athletics', sellerName: 'Kestrel Boosters',
  sellerAddress: '12 Alder Street\nTamarack Ridge', sponsorName: 'Juniper & Pike Hardware', sponsorAddress: '4 Third Street\nTamarack Ridge', seasonName: 'Basketball 2026-27', startsOn: '2026-11-20', endsOn: '2027-03-13',
  putOn: '2026-11-23', lapsesOn: '2026-12-11', pricing: 'fixed', priceCents: 70_001, billAtLeastCents: null, billAtMostCents: null, pricesOfYears: [70_001], increaseBasisPoints: 0, billingPlan: { kind: 'installments', installments: [{ on: dayOf('2026-12-01'), share: 1 }, { on: dayOf('2027-01-15'), share: 1 }] }, cancelledGamePolicy: 'credit',
  exclusivities: [], officeNotes: null,
  lines: [
    line(),
    line({ name: 'Concession read', counting: 'perGame', quantity: 2, each: [{ count: 14, cents: 2000 }], valueCents: 28_000, windows: ['halftime', 'timeOut'], blackoutDays: ['2026-12-18'], teams: ['Kestrels Varsity boys'], leastPerGame: 1, mostPerGame: 2, pinned: [{ playedOn: '2026-12-04', label: 'Herons at Kestrels' }] }),
    line({ name: 'Banner at the Perch', counting: null, quantity: 1, per: 'piece', each: [{ count: 1, cents: 1091 }], valueCents: 1091, dueOn: '2026-12-01' }),
  ],
  ...extra,
});

test('an offer is one page to sign: who offers what to whom, what each read is worth, the price and until when it holds', async () => {
  const { text, isTagged, title, pages } = await read(await typesetter.pdf('offer', offer()));
  expect([isTagged, title, pages.length]).toEqual([true, 'Offer O-2027-0003, Juniper & Pike Hardware', 1]);
  for (const words of [
    'Kestrel Boosters', '12 Alder Street', '4 Third Street', 'O-2027-0003', '6 over the whole term', '2 × $68.19, 4 × $68.18', '$409.10', '2 in each game, 14 in all', '$20.00 a read', '$280.00', 'Banner at the Perch', 'by December 1, 2026',
    'at halftime and in time-outs', 'not on December 18, 2026', 'games of Kestrels Varsity boys', 'for sure on December 4, 2026 (Herons at Kestrels)', 'at least 1 in a game', 'Price: $700.01', 'Billed $350.01 on December 1, 2026, $350.00 on January 15, 2027.', 'December 11, 2026',
    'reads counted for that game are credited', 'Reads are acknowledgments', 'For the sponsor: name, signature, day', 'For the seller of record: name, signature, day', 'Nothing on this paper is tax advice',
  ]) expect(text).toContain(words);
  expect(text).not.toContain('For the office');
  expect(text).not.toContain('tax adviser');
});

test('several years, an exclusive place and a price by the read are said in words', async () => {
  const { text } = await read(await typesetter.pdf('offer', offer({
    number: null, pricesOfYears: [70_001, 71_751, 73_545], increaseBasisPoints: 250, cancelledGamePolicy: 'valueMovesOn',
    exclusivities: [
      { categoryName: 'Hardware', reach: 'season', schoolName: null, startsOn: '2026-11-20', endsOn: '2027-03-13', gameDays: [], windowKinds: [] },
      { categoryName: 'Bank', reach: 'window', schoolName: null, startsOn: '2026-11-20', endsOn: '2027-03-13', gameDays: [], windowKinds: ['timeOut', 'halftime'] },
      { categoryName: 'Paint', reach: 'game', schoolName: 'Tamarack Ridge', startsOn: '2026-11-20', endsOn: '2027-03-13', gameDays: ['2026-12-04'], windowKinds: [] },
    ],
  })));
  for (const words of ['Draft', 'Year 1: $700.01; Year 2: $717.51; Year 3: $735.45', '2.5% more than the year before', 'The only sponsor of the category Hardware from November 20, 2026 to March 13, 2027', 'The only sponsor of Tamarack Ridge of the category Paint in the games of December 4, 2026', 'it does not say what may be sold', 'category Bank in time-outs and at halftime, from November 20, 2026', 'moves on to the reads that remain']) expect(text).toContain(words);
  const bankShots = line({ name: 'Bank-shot mention', counting: 'onOccurrence', quantity: 0, readsAtLeast: 11, readsAtMost: 40, each: [{ count: 11, cents: 450 }], valueCents: 4950, isPricedByRead: true });
  const perRead = await read(await typesetter.pdf('offer', offer({ pricing: 'perRead', priceCents: 0, billAtMostCents: 18_000, lines: [bankShots] })));
  for (const words of ['each time it happens, at least 11, at most 40', '$4.50 a read', 'as they come', 'Price: by the reads given, at most $180.00']) expect(perRead.text).toContain(words);
});

test('the department’s own copy says what the sponsor is not given', async () => {
  const { text } = await read(await typesetter.pdf('offer', offer({ officeNotes: ['The price goes up and down with attendance: ask your tax adviser before you sign.'] })));
  expect(text).toContain('For the office, not for the sponsor.');
  expect(text).toContain('ask your tax adviser');
});

test.each(['letter', 'a4'] as const)('twelve lines fit one page of %s, and with thirty the signatures stay together on the last', async (paper) => {
  const many = (count: number) => Array.from({ length: count }, (_, place) => line({ name: `Read kind ${place + 1}`, windows: ['halftime'], blackoutDays: ['2026-12-18'] }));
  const twelve = await read(await typesetter.pdf('offer', offer({ paper, lines: many(12) })));
  expect(twelve.pages.length).toBe(1);
  expect(twelve.size[0]! > 600).toBe(paper === 'letter');
  const thirty = await read(await typesetter.pdf('offer', offer({ paper, lines: many(30) })));
  expect(thirty.pages.length).toBe(2);
  expect(thirty.pageTexts[1]).toContain('For the sponsor: name');
  expect(thirty.pageTexts[1]).toContain('For the seller of record: name');
  for (let place = 1; place <= 30; place += 1) expect(thirty.text).toMatch(new RegExp(`Read kind ${place} ?,`));
});
