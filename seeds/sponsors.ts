import { ReservedCategoryService } from '../server/sponsorship/company/reserved-category.service.ts';
import { PackageService } from '../server/sponsorship/packages/package.service.ts';
import { PayerService } from '../server/sponsorship/payer.service.ts';
import { RateCardLineService } from '../server/sponsorship/rate-card-line.service.ts';
import { ReadKindService } from '../server/sponsorship/read-kind.service.ts';
import type { ReadKindDto } from '../server/sponsorship/read-kind.dto.ts';
import { SellerService } from '../server/sponsorship/seller.service.ts';
import { SponsorCategoryService } from '../server/sponsorship/sponsor-category.service.ts';
import { SponsorService } from '../server/sponsorship/sponsor.service.ts';
import type { Story } from './story.ts';

const BLOCKED = ['Tobacco', 'Vaping', 'Alcohol', 'Gambling'];

interface DemoSponsor {
  name: string;
  sayAs?: string;
  category: string;
  contactName: string;
  mail: string;
  street: string;
  /** who pays, where that is not the sponsor by its own name */
  payer?: string;
  nextStep?: string;
}

const SPONSORS = {
  juniper: { name: 'Juniper & Pike Hardware', category: 'Hardware and home', contactName: 'Gus Pike', mail: 'gus@juniperpike.example', street: '18 Third Street' },
  copperline: { name: 'Copperline Credit Union', category: 'Bank or credit union', contactName: 'Nadia Ferreira-Holm', mail: 'community@copperline.example', street: '240 Main Street' },
  snowmelt: { name: 'Snowmelt Creamery', category: 'Food and drink', contactName: 'Elspeth Moor', mail: 'hello@snowmelt.example', street: '7 Mill Lane', nextStep: 'Send the senior night offer to Elspeth for signing' },
  halvorsen: { name: 'Halvorsen Orthodontics', sayAs: 'HAL-vor-sun Orthodontics', category: 'Health', contactName: 'Dr. Signe Halvorsen', mail: 'office@halvorsen.example', street: '61 Aspen Court', nextStep: 'Call about the open invoice and the reads that were missed' },
  pinyon: { name: 'Pinyon Print Works', sayAs: 'PIN-yun Print Works', category: 'Printing and design', contactName: 'Ruben Castellane', mail: 'shop@pinyonprint.example', street: '33 Depot Road' },
  mirabel: { name: "Mirabel's Kitchen", sayAs: "MEER-uh-bells Kitchen", category: 'Food and drink', contactName: 'Mirabel Otero-Lane', mail: 'mirabel@mirabelskitchen.example', street: '105 Main Street' },
  okafor: { name: 'Okafor Family Insurance', sayAs: 'oh-KAH-for Family Insurance', category: 'Insurance', contactName: 'Chidi Okafor', mail: 'chidi@okaforinsurance.example', street: '410 Ridge Road', payer: 'Okafor Agency Accounts Payable' },
  lantern: { name: 'Blue Lantern Tire', category: 'Automotive', contactName: 'Hank Delacroix-Wynn', mail: 'counter@bluelantern.example', street: '9 Quarry Road' },
} as const satisfies Record<string, DemoSponsor>;
export type SponsorKey = keyof typeof SPONSORS;

const READ_KINDS = {
  gameBall: { name: 'Game ball', timing: 'scheduled', windows: ['pregame'], defaultSeconds: 20, sponsorsPerGame: 1, presents: 'game ball', cents: 10_000 },
  bankShot: { name: 'Bank-shot mention', timing: 'onOccurrence', windows: ['timeOut', 'betweenPeriods', 'halftime'], defaultSeconds: 6, sponsorsPerGame: 1, occurrence: 'bankShot', cents: 2_500 },
  concession: { name: 'Concession read', timing: 'scheduled', windows: ['halftime', 'betweenPeriods'], defaultSeconds: 15, sponsorsPerGame: 1, cents: 4_000 },
  quarter: { name: 'Quarter-break read', timing: 'scheduled', windows: ['betweenPeriods', 'halftime'], defaultSeconds: 15, sponsorsPerGame: 2, cents: 3_000 },
  timeOut: { name: 'Time-out read', timing: 'scheduled', windows: ['timeOut'], defaultSeconds: 12, sponsorsPerGame: 4, cents: 2_500 },
} as const satisfies Record<string, ReadKindDto & { cents: number }>;
export type ReadKindKey = keyof typeof READ_KINDS;

export interface Market {
  sellers: { athletics: string; boosters: string };
  sponsors: Record<SponsorKey, string>;
  payers: Record<SponsorKey, string>;
  /** the category of each sponsor */
  categories: Record<SponsorKey, string>;
  kinds: Record<ReadKindKey, { id: string; cents: number }>;
}

export async function tellMarket(story: Story, seasonId: string): Promise<Market> {
  return story.on(story.calendar.seasonStartsOn, async () => {
    const categories = await tellCategories(story);
    const sponsors = {} as Record<SponsorKey, string>;
    const payers = {} as Record<SponsorKey, string>;
    for (const [key, sponsor] of Object.entries(SPONSORS) as [SponsorKey, DemoSponsor][]) {
      const { name, category, contactName, mail: email } = sponsor;
      const address = `${sponsor.street}, Tamarack Ridge`;
      const row = await story.of(SponsorService).add({
        ...{ name, sayAs: sponsor.sayAs ?? null, categoryId: categories[category]!, status: 'prospect', contactName, email, address },
        ...{ lastContactOn: story.calendar.before(-1, 3), nextStep: sponsor.nextStep ?? null, nextStepOn: sponsor.nextStep ? story.calendar.gameDay(1) : null },
      });
      sponsors[key] = row.id;
      payers[key] = (await story.of(PayerService).add({ sponsorId: row.id, name: sponsor.payer ?? name, email, address })).id;
    }
    const kinds = await tellKinds(story, seasonId);
    await tellPackages(story, seasonId, kinds);
    const ofSponsors = Object.fromEntries(Object.entries(SPONSORS).map(([key, { category }]) => [key, categories[category]!])) as Market['categories'];
    return { sellers: await tellSellers(story), sponsors, payers, categories: ofSponsors, kinds };
  });
}

async function tellCategories(story: Story): Promise<Record<string, string>> {
  const names = new Set(Object.values(SPONSORS).map((sponsor) => sponsor.category));
  const ids: Record<string, string> = {};
  for (const name of [...names, ...BLOCKED]) {
    ids[name] = (await story.of(SponsorCategoryService).add({ name, isBlocked: BLOCKED.includes(name), isFood: name === 'Food and drink' })).id;
  }
  const drinks = await story.of(SponsorCategoryService).add({ name: 'Soft drinks', isBlocked: false, isFood: true });
  await story.of(ReservedCategoryService).add({ categoryId: drinks.id, heldBy: 'Tamarack Valley School District, drink contract', startsOn: story.calendar.seasonStartsOn, note: 'Signed by the district for all its schools.' });
  return ids;
}

/** Bundles at a price below that of their parts. */
async function tellPackages(story: Story, seasonId: string, kinds: Market['kinds']): Promise<void> {
  const reads = (key: ReadKindKey, quantity: number) => ({ readKindId: kinds[key].id, counting: 'perTerm' as const, quantity });
  await story.of(PackageService).add({ seasonId, name: 'A voice all winter', priceCents: 125_000, lines: [reads('timeOut', 20), reads('quarter', 12), { benefitName: 'Banner above the Perch', quantity: 1 }] });
  await story.of(PackageService).add({ seasonId, name: 'First time at the Perch', priceCents: 22_500, note: 'For a business that has never sponsored us.', lines: [reads('timeOut', 6), { benefitName: 'Full program page', quantity: 1 }] });
}

async function tellSellers(story: Story): Promise<Market['sellers']> {
  const athletics = await story.of(SellerService).add({
    ...{ name: 'Tamarack Ridge Athletics', numberPrefix: 'TRA', address: '400 Ridge Road, Tamarack Ridge', remitTo: 'Tamarack Ridge High School, Athletics, 400 Ridge Road' },
    ...{ taxIdentity: '00-0000001', contactName: 'Perpetua Lindqvist', contactEmail: 'bookkeeper@tamarack.example', contactPhone: '555-0140', termsDays: 21 },
  });
  const boosters = await story.of(SellerService).add({
    ...{ name: 'Kestrel Boosters', numberPrefix: 'KB', address: 'Box 12, Tamarack Ridge', remitTo: 'Kestrel Boosters, Box 12, Tamarack Ridge' },
    ...{ taxIdentity: '00-0000002', contactName: 'Solveig Arroway', contactEmail: 'treasurer@kestrelboosters.example', contactPhone: '555-0177', termsDays: 30 },
  });
  return { athletics: athletics.id, boosters: boosters.id };
}

async function tellKinds(story: Story, seasonId: string): Promise<Market['kinds']> {
  const kinds = {} as Market['kinds'];
  for (const [key, { cents, ...kind }] of Object.entries(READ_KINDS) as [ReadKindKey, ReadKindDto & { cents: number }][]) {
    const { id } = await story.of(ReadKindService).add({ ...kind, windows: [...kind.windows] });
    await story.of(RateCardLineService).add({ seasonId, readKindId: id, priceCents: cents });
    kinds[key] = { id, cents };
  }
  for (const [benefitName, priceCents] of [['Banner above the Perch', 50_000], ['Full program page', 15_000], ['Display table in the lobby', 7_500]] as const) {
    await story.of(RateCardLineService).add({ seasonId, benefitName, priceCents });
  }
  return kinds;
}
