import type { Day } from '../server/domain/day.ts';
import { OpeningService } from '../server/billing/opening/opening.service.ts';
import { newId } from '../server/platform/database/ids.ts';
import { GoodsService } from '../server/billing/goods/goods.service.ts';
import { ContractRecords } from '../server/sponsorship/contract-records.service.ts';
import { ContractHappenings } from '../server/sponsorship/contract-happenings.service.ts';
import { ContractService } from '../server/sponsorship/contract.service.ts';
import type { ContractDto, TermDto } from '../server/sponsorship/contract.dto.ts';
import type { BenefitDto, CommitmentDto } from '../server/sponsorship/contract-line.dto.ts';
import type { SeasonPlaces } from './schools.ts';
import type { Market, ReadKindKey, SponsorKey } from './sponsors.ts';
import type { Story } from './story.ts';

/** What the rest of the story needs of a contract: its id and the ids of its lines. */
export interface Agreement {
  contractId: string;
  /** the first commitment, or a new id where there is none */
  commitmentId: string;
  benefitId: string;
  sponsor: SponsorKey;
}
export type Agreements = Record<'juniper' | 'copperline' | 'snowmelt' | 'halvorsen' | 'pinyon' | 'mirabel' | 'okafor' | 'lantern' | 'programs', Agreement>;

interface Deal {
  /** the number the director's old list gave it */
  outsideId: string;
  sponsor: SponsorKey;
  seller?: keyof Market['sellers'];
  title: string;
  kind: ReadKindKey;
  commitment: Partial<CommitmentDto> & Pick<CommitmentDto, 'counting'>;
  benefit?: BenefitDto;
  term: Pick<TermDto, 'priceCents' | 'billingPlan'> & Partial<TermDto>;
  more?: Partial<ContractDto>;
  isOnlyOneOfItsCategory?: boolean;
}

/** The deals of the season, in the order they were made. */
function deals({ calendar }: Story, { ours }: SeasonPlaces): Record<keyof Agreements, Deal> {
  const start = calendar.seasonStartsOn;
  const inFull = { kind: 'inFull', on: start } as const;
  const parts = (...days: Day[]) => ({ kind: 'installments' as const, installments: days.map((on) => ({ on, share: 1 })) });
  return {
    juniper: {
      outsideId: 'A-101',
      ...{ sponsor: 'juniper', title: 'Game ball, every varsity home game', kind: 'gameBall' },
      commitment: { counting: 'perGame', reads: 1, levels: ['varsity'], priority: 1 },
      term: { priceCents: 140_000, billingPlan: inFull },
      more: { purchaseOrderNumber: 'JP-2231', cancelledGamePolicy: 'credit' },
    },
    copperline: {
      outsideId: 'A-102',
      ...{ sponsor: 'copperline', title: 'Bank shots of the season', kind: 'bankShot' },
      commitment: { counting: 'onOccurrence', readsAtLeast: 12, readsAtMost: 40, whose: 'ours', severalCountAsOne: true },
      term: { priceCents: 90_000, billingPlan: parts(start, calendar.gameDay(-3), calendar.gameDay(6)) },
      isOnlyOneOfItsCategory: true,
    },
    snowmelt: {
      outsideId: 'A-103',
      ...{ sponsor: 'snowmelt', title: 'At the concession stand', kind: 'concession' },
      commitment: { counting: 'perTerm', reads: 20, leastPerGame: 1 },
      term: { priceCents: 80_000, billingPlan: inFull },
    },
    halvorsen: {
      outsideId: 'A-104',
      ...{ sponsor: 'halvorsen', title: 'Time-outs and the banner', kind: 'timeOut' },
      commitment: { counting: 'perTerm', reads: 14, levels: ['varsity'] },
      benefit: { name: 'Banner above the Perch', quantity: 1, rateCents: 50_000, fairValueCents: 0, earns: 'overDays', startsOn: start, endsOn: calendar.seasonEndsOn },
      term: { priceCents: 85_000, billingPlan: inFull },
    },
    pinyon: {
      outsideId: 'A-105',
      ...{ sponsor: 'pinyon', title: 'Quarter breaks and a program page', kind: 'quarter' },
      commitment: { counting: 'perTerm', reads: 12, teamIds: [ours['Boys varsity'], ours['Girls varsity']] },
      benefit: { name: 'Full program page', quantity: 1, rateCents: 15_000, fairValueCents: 2_500, earns: 'onDelivery', dueOn: calendar.gameDay(8) },
      term: { priceCents: 48_000, billingPlan: inFull },
    },
    mirabel: {
      outsideId: 'B-201',
      ...{ sponsor: 'mirabel', seller: 'boosters', title: 'Time-outs before the turn of the season', kind: 'timeOut' },
      commitment: { counting: 'perTerm', reads: 6, endsOn: calendar.before(-2, 1) },
      term: { priceCents: 15_000, billingPlan: inFull },
    },
    okafor: {
      outsideId: 'A-107',
      ...{ sponsor: 'okafor', title: 'Quarter breaks, all teams', kind: 'quarter' },
      commitment: { counting: 'perTerm', reads: 18 },
      term: { priceCents: 54_000, billingPlan: parts(start, calendar.gameDay(-4), calendar.gameDay(8)) },
    },
    lantern: {
      outsideId: 'B-202',
      ...{ sponsor: 'lantern', seller: 'boosters', title: 'Time-outs, billed as they are read', kind: 'timeOut' },
      commitment: { counting: 'perTerm', reads: 16, priceEachCents: 2_250, levels: ['varsity', 'juniorVarsity'] },
      term: { priceCents: 0, pricing: 'perRead', billAtMostCents: 36_000, billingPlan: { kind: 'perReadInArrears' } },
    },
    programs: {
      outsideId: 'B-205',
      ...{ sponsor: 'pinyon', seller: 'boosters', title: 'Programs of the home nights, for reads', kind: 'quarter' },
      commitment: { counting: 'perTerm', reads: 4, startsOn: calendar.gameDay(2) },
      term: { priceCents: 30_000, billingPlan: inFull },
      more: { isInKind: true },
    },
  };
}

/** Writes every deal as a draft and signs those that were signed; one is taken over from the books before. */
export async function tellContracts(story: Story, places: SeasonPlaces, market: Market): Promise<Agreements> {
  const start = story.calendar.seasonStartsOn;
  return story.on(start, async () => {
    const agreements = {} as Agreements;
    for (const [key, deal] of Object.entries(deals(story, places)) as [keyof Agreements, Deal][]) {
      const agreement = { contractId: newId(), commitmentId: newId(), benefitId: newId(), sponsor: deal.sponsor };
      await story.of(ContractService).add(formOf(deal, agreement, story, places, market));
      if (key === 'programs') await promisePrograms(story, agreement);
      agreements[key] = agreement;
      if (key === 'pinyon') await takeOver(story, agreement);
      else await story.of(ContractHappenings).sign(agreement.contractId, { signedOn: start, signedByName: SIGNERS[deal.sponsor] });
    }
    return agreements;
  });
}

/** What the printer pays with, at its fair value. */
async function promisePrograms(story: Story, { contractId }: Agreement): Promise<void> {
  const promises = [{ what: 'Printed program', quantity: 1_000, unitCents: 30, dueOn: story.calendar.gameDay(4) }];
  const { term } = await story.of(ContractRecords).load(contractId);
  await story.of(GoodsService).promise(contractId, term.version, { promises });
}

/** Read and partly paid since the fall program, before Rafterline kept the books. */
async function takeOver(story: Story, { contractId, commitmentId }: Agreement): Promise<void> {
  const asOf = story.calendar.seasonStartsOn;
  await story.of(OpeningService).open(contractId, {
    ...{ asOf, signedOn: asOf, signedByName: SIGNERS.pinyon, billedCents: 20_000, paidCents: 5_000 },
    givenByCommitment: [{ commitmentId, given: 3 }],
  });
}

const SIGNERS: Readonly<Record<SponsorKey, string>> = {
  ...{ juniper: 'Gus Pike', copperline: 'Nadia Ferreira-Holm', snowmelt: 'Elspeth Moor', halvorsen: 'Dr. Signe Halvorsen' },
  ...{ pinyon: 'Ruben Castellane', mirabel: 'Mirabel Otero-Lane', okafor: 'Chidi Okafor', lantern: 'Hank Delacroix-Wynn' },
};

function formOf(deal: Deal, agreement: Agreement, { calendar }: Story, { seasonId }: SeasonPlaces, market: Market): ContractDto {
  const kind = market.kinds[deal.kind];
  return {
    id: agreement.contractId,
    sponsorId: market.sponsors[deal.sponsor],
    sellerId: market.sellers[deal.seller ?? 'athletics'],
    payerId: market.payers[deal.sponsor],
    title: deal.title,
    outsideId: deal.outsideId,
    ...deal.more,
    term: { seasonId, startsOn: calendar.seasonStartsOn, endsOn: calendar.seasonEndsOn, ...deal.term },
    commitments: [{ id: agreement.commitmentId, readKindId: kind.id, rateCents: kind.cents, ...deal.commitment }],
    exclusivities: deal.isOnlyOneOfItsCategory ? [{ categoryId: market.categories[deal.sponsor], reach: 'season', startsOn: calendar.seasonStartsOn, endsOn: calendar.seasonEndsOn }] : [],
    benefits: deal.benefit ? [{ id: agreement.benefitId, ...deal.benefit }] : [],
  };
}
