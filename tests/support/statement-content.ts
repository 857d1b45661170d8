import { addDays } from '../../server/domain/day.ts';
import type { Day } from '../../server/domain/day.ts';
import type { StatementContent, StatementNight, StatementRead } from '../../server/domain/reports/statement-content.ts';

export const day = (text: string): Day => text as Day;

export const aRead = (extra: Partial<StatementRead> = {}): StatementRead => ({
  readKindName: 'Concession read', windowName: 'Halftime', clock: '19:42', copyTitle: 'Winter cones', copyVersionNumber: 2,
  outcome: 'given', why: null, atTheTable: 'announcer', forMissedOn: null, ...extra,
});

export const aNight = (heldOn: Day, reads: StatementRead[], extra: Partial<StatementNight> = {}): StatementNight => ({
  nightId: heldOn, heldOn, opponent: 'Port Ansel Herons', attendance: 400, attendanceHow: 'counted', reads, ...extra,
});

/** Forty reads at $25.00, thirty-three given, four made good, $75.00 credited, as a statement of performance shows them. */
export function aStatement(extra: Partial<StatementContent> = {}): StatementContent {
  return {
    head: {
      departmentName: 'Tamarack Ridge Athletics', schoolName: 'Tamarack Ridge High School', sellerName: 'Kestrel Boosters', sponsorId: 's', sponsorName: 'Snowmelt Creamery',
      contractNumber: 'C-2027-0007', contractTitle: 'Concession reads', seasonName: 'Basketball 2026-27', startsOn: day('2026-11-20'), endsOn: day('2027-03-13'),
      throughOn: day('2027-03-20'), locale: 'en-US', currency: 'USD', paper: 'letter',
    },
    lines: [{ commitmentId: 'a', name: 'Concession read', counting: 'perTerm', promised: 40, given: 33, madeGood: 4, credited: 3, released: 0, carried: 0, stillToCome: 0, extra: 0 }],
    pace: [{ on: day('2026-12-01'), expected: 4, given: 3 }, { on: day('2027-01-15'), expected: 20, given: 14 }, { on: day('2027-03-12'), expected: 40, given: 37 }],
    benefits: [{ name: 'Banner at the Perch', quantity: 1, delivered: 1, dueOn: day('2026-12-01'), shownFrom: null, shownTo: null, proofs: [{ on: day('2026-11-28'), quantity: 1, proof: 'Photo in the binder' }] }],
    nights: [
      aNight(day('2026-12-01'), [aRead(), aRead({ outcome: 'notRead', why: 'ran out of time', clock: null, copyTitle: null, copyVersionNumber: null })]),
      aNight(day('2026-12-08'), [aRead({ outcome: 'makegood', forMissedOn: day('2026-12-01') }), aRead({ outcome: 'extra', clock: '20:05', windowName: 'After the third quarter', atTheTable: 'OB' })], { opponent: 'Quarry Bend Miners', attendance: null, attendanceHow: null }),
    ],
    notSignedOff: 0,
    changes: [{ on: day('2027-02-15'), sentence: '3 reads credited: the last three games were called off.' }],
    account: [
      { on: day('2026-11-23'), sentence: 'Invoice KB-2027-0014 issued.', chargeCents: 100_000, creditCents: 0, balanceCents: 100_000 },
      { on: day('2026-12-05'), sentence: 'Check 1041 received.', chargeCents: 0, creditCents: 92_500, balanceCents: 7_500 },
      { on: day('2027-02-15'), sentence: 'Credit memo KB-M-0002: 3 reads credited.', chargeCents: 0, creditCents: 7_500, balanceCents: 0 },
    ],
    ...extra,
  };
}

/** A season of many nights with three reads on each, none like another. */
export function aLongStatement(nights: number): StatementContent {
  return aStatement({
    pace: Array.from({ length: nights }, (_, place) => ({ on: addDays(day('2026-11-20'), place), expected: (place + 1) * 3, given: (place + 1) * 3 - (place % 3) })),
    nights: Array.from({ length: nights }, (_, place) =>
      aNight(addDays(day('2026-11-20'), place), [1, 2, 3].map((read) => aRead({ copyTitle: `Copy ${place + 1}-${read}.` })), { attendance: place % 4 === 0 ? null : 200 + place })),
  });
}
