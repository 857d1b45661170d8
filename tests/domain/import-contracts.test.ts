import { describe, expect, test } from 'vitest';
import { dayOf } from '../../server/domain/day.ts';
import { centsOf } from '../../server/domain/money.ts';
import { changesNothing } from '../../server/domain/season/import-plan.ts';
import { planContractImport } from '../../server/domain/sponsorship/import-contracts.ts';
import type { ContractThere, ContractsThere } from '../../server/domain/sponsorship/import-contracts.ts';
import { aFile, inWords } from './import-files.ts';

const there: ContractsThere = {
  season: { startsOn: dayOf('2026-11-15'), endsOn: dayOf('2027-03-10') },
  sponsors: [{ id: 'juniper', name: 'Juniper & Pike Hardware', outsideId: null, categoryName: 'Hardware', contactName: 'Łukasz Pike', email: null, phone: null }],
  categories: [{ name: 'Hardware', isBlocked: false }, { name: 'Other', isBlocked: false }, { name: 'Vaping', isBlocked: true }],
  sellers: [{ id: 'school', name: 'Tamarack Ridge High School' }, { id: 'boosters', name: 'Kestrel Boosters' }],
  readKinds: [
    { id: 'gameBall', name: 'Game ball', timing: 'scheduled', rateCents: centsOf(7500) },
    { id: 'concession', name: 'Concession read', timing: 'scheduled', rateCents: null },
    { id: 'bankShot', name: 'Bank-shot mention', timing: 'onOccurrence', rateCents: centsOf(2500) },
  ],
  contracts: [],
};
const HEAD = 'Contract number,Sponsor,Category,Contact,Read kind,Count,Per,Price,From,To,Seller,Bill to';
const plan = (lines: string[], change: Partial<ContractsThere> = {}) => planContractImport(aFile(HEAD, ...lines), { ...there, ...change });

const TWO_LINES = [
  'C-7,Juniper & Pike Hardware,,,Game ball,6,season,"$450.00",12/1/2026,2/28/2027,Tamarack Ridge High School,',
  'C-7,Juniper & Pike Hardware,,,Concession read,2,per game,320,12/1/2026,2/28/2027,,Pike Holdings',
];

describe('sponsors with contracts from a file', () => {
  test('rows of one contract number are lines of one contract, its price their sum', () => {
    const { contracts } = plan(TWO_LINES);
    expect(inWords(contracts)).toEqual(['2+3 create']);
    expect(contracts.steps[0]?.wanted).toEqual({
      outsideId: 'C-7', sponsorId: 'juniper', sponsorName: 'Juniper & Pike Hardware', sellerId: 'school', payerName: 'Pike Holdings',
      startsOn: '2026-12-01', endsOn: '2027-02-28', priceCents: 77000,
      commitments: [
        { readKindId: 'gameBall', counting: 'perTerm', reads: 6, readsAtLeast: null, readsAtMost: null, rateCents: 7500, startsOn: null, endsOn: null },
        { readKindId: 'concession', counting: 'perGame', reads: 2, readsAtLeast: null, readsAtMost: null, rateCents: 16000, startsOn: null, endsOn: null },
      ],
    });
  });

  test('rows without a number belong together by sponsor and seller', () => {
    const rows = [
      ',Copperline Credit Union,Banking,Xochitl Reyes,Bank-shot mention,10,,250,,,Kestrel Boosters,',
      ',Snowmelt Creamery,Food,,Concession read,12,,600,,,Kestrel Boosters,',
      ',Copperline Credit Union,,,Concession read,8,,320,1/1/2027,,Kestrel Boosters,',
    ];
    const { sponsors, contracts } = plan(rows);
    expect(inWords(sponsors)).toEqual(['2+4 create', '3 create']);
    expect(inWords(contracts)).toEqual(['2+4 create', '3 create']);
    expect(contracts.steps[0]?.wanted).toMatchObject({
      sponsorId: null, sellerId: 'boosters', startsOn: '2026-11-15', endsOn: '2027-03-10',
      commitments: [{ counting: 'onOccurrence', reads: 0, readsAtLeast: 10, readsAtMost: null }, { reads: 8, startsOn: '2027-01-01', endsOn: null }],
    });
    expect(sponsors.steps[0]?.notes).toEqual(['Banking is added as a category.']);
  });

  test('a row with a sponsor alone makes a prospect and no contract', () => {
    const { sponsors, contracts } = plan([',Blue Lantern Tire,,,,,,,,,,']);
    expect(sponsors.steps[0]).toMatchObject({ action: 'create', wanted: { name: 'Blue Lantern Tire', categoryName: 'Other' } });
    expect(contracts.steps).toEqual([]);
  });

  test('a sponsor that is there changes only where the file says something', () => {
    const { sponsors } = plan([',juniper and pike hardware,,,,,,,,,,', ',Juniper & Pike Hardware,,Siobhán Pike,,,,,,,,']);
    expect(inWords(sponsors)).toEqual(['2 create', '3 change contactName Łukasz Pike>Siobhán Pike']);
  });

  test('a blocked category is said before anybody signs', () => {
    expect(plan([',Cloud Nine,Vaping,,,,,,,,,']).sponsors.steps[0]?.notes[0]).toContain('blocks the category Vaping');
  });

  test.each([
    ['no count', 'C-1,Juniper & Pike Hardware,,,Game ball,,,100,,,Kestrel Boosters,', 'count import-value-missing'],
    ['a count of none', 'C-1,Juniper & Pike Hardware,,,Game ball,0,,100,,,Kestrel Boosters,', 'count count-not-above-zero'],
    ['half a read', 'C-1,Juniper & Pike Hardware,,,Game ball,2.5,,100,,,Kestrel Boosters,', 'count import-count-unreadable'],
    ['a read kind nobody knows', 'C-1,Juniper & Pike Hardware,,,Sky banner,2,,100,,,Kestrel Boosters,', 'readKind import-read-kind-unknown'],
    ['an occurrence counted per game', 'C-1,Juniper & Pike Hardware,,,Bank-shot mention,2,per game,100,,,Kestrel Boosters,', 'counting import-choice-unknown'],
    ['a price in words', 'C-1,Juniper & Pike Hardware,,,Game ball,2,,plenty,,,Kestrel Boosters,', 'price import-money-unreadable'],
    ['an end before its start', 'C-1,Juniper & Pike Hardware,,,Game ball,2,,100,2/1/2027,1/1/2027,Kestrel Boosters,', 'to ends-before-it-starts'],
    ['a seller nobody knows', 'C-1,Juniper & Pike Hardware,,,Game ball,2,,100,,,Parents,', 'seller import-seller-unknown'],
    ['no seller where there are two', 'C-1,Juniper & Pike Hardware,,,Game ball,2,,100,,,,', 'seller import-seller-missing'],
    ['no sponsor', 'C-1,,,,Game ball,2,,100,,,Kestrel Boosters,', 'sponsor import-value-missing'],
  ])('%s is refused with its reason', (_, row, why) => {
    expect(inWords(plan([row]).contracts)).toEqual([`2 refuse ${why}`]);
  });

  test('one faulty line refuses its whole contract and no other', () => {
    const rows = [TWO_LINES[0]!, TWO_LINES[1]!.replace(',2,', ',two,'), 'C-8,Juniper & Pike Hardware,,,Game ball,6,,450,,,Kestrel Boosters,'];
    expect(inWords(plan(rows).contracts)).toEqual(['2+3 refuse count import-count-unreadable', '4 create']);
  });

  test('lines of one contract that name two sponsors are refused', () => {
    expect(inWords(plan([TWO_LINES[0]!, TWO_LINES[1]!.replace('Juniper & Pike Hardware', 'Pinyon Print Works')]).contracts)).toEqual([
      '2+3 refuse sponsor import-contract-differs',
    ]);
  });

  const wanted = plan(TWO_LINES).contracts.steps[0]!.wanted!;
  const stored: ContractThere = { ...wanted, id: 'contract-7', sponsorId: 'juniper', state: 'signed' };

  test('the same file again changes nothing, signed or not', () => {
    for (const state of ['draft', 'signed'] as const) {
      const again = plan(TWO_LINES, { contracts: [{ ...stored, state }] });
      expect(inWords(again.contracts)).toEqual(['2+3 same']);
      expect([changesNothing(again.contracts), changesNothing(again.sponsors)]).toEqual([true, true]);
    }
  });

  test('a draft is changed by a file, a signed contract is not', () => {
    const dearer = [TWO_LINES[0]!.replace('450.00', '500.00'), TWO_LINES[1]!];
    expect(inWords(plan(dearer, { contracts: [{ ...stored, state: 'draft' }] }).contracts)).toEqual(['2+3 change price 77000>82000']);
    expect(inWords(plan(dearer, { contracts: [stored] }).contracts)).toEqual(['2+3 refuse price import-contract-signed']);
  });

  test('the contract’s own price holds over the sum of its lines', () => {
    const file = aFile('Contract,Sponsor,Item,Qty,Line price,Contract total,Seller', 'C-9,Juniper & Pike Hardware,Game ball,6,450,700,Kestrel Boosters', 'C-9,Juniper & Pike Hardware,Concession read,8,320,,Kestrel Boosters');
    expect(planContractImport(file, there).contracts.steps[0]?.wanted?.priceCents).toBe(70000);
  });
});
