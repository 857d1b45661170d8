import { newId } from '../server/platform/database/ids.ts';
import { OfferLife } from '../server/sponsorship/offers/offer-life.service.ts';
import { OfferPutting } from '../server/sponsorship/offers/offer-putting.service.ts';
import { OfferService } from '../server/sponsorship/offers/offer.service.ts';
import type { OfferDto } from '../server/sponsorship/offers/offer.dto.ts';
import { SponsorContacts } from '../server/sponsorship/contacts/sponsor-contact.service.ts';
import type { SponsorContactDto } from '../server/sponsorship/contacts/sponsor-contact.dto.ts';
import { SponsorService } from '../server/sponsorship/sponsor.service.ts';
import type { Day } from '../server/domain/day.ts';
import { addDays } from '../server/domain/day.ts';
import type { SeasonPlaces } from './schools.ts';
import type { Games } from './schedule.ts';
import type { Market, ReadKindKey, SponsorKey } from './sponsors.ts';
import type { Story } from './story.ts';

interface Words extends SponsorContactDto {
  sponsor: SponsorKey;
}

/** What was said to sponsors, and whom to call next: one call is overdue, two are due this week. */
function words({ calendar: { today } }: Story): Words[] {
  const ago = (days: number): Day => addDays(today, -days);
  return [
    { sponsor: 'mirabel', contactedOn: ago(16), how: 'visit', withWhom: 'Mirabel Otero-Lane', what: 'Liked the crowd at the Otters night; would go on after the turn of the season if the price holds.', nextStep: 'Ask whether eight time-outs are enough', nextStepOn: ago(2) },
    { sponsor: 'halvorsen', contactedOn: ago(9), how: 'call', withWhom: 'Dr. Signe Halvorsen', what: 'Noticed that reads were missed when the microphone failed.', nextStep: 'Call about the open invoice and the reads that were missed', nextStepOn: today },
    { sponsor: 'okafor', contactedOn: ago(6), how: 'message', withWhom: 'Chidi Okafor', what: 'Asked what a second sponsor’s time-outs would cost.', nextStep: 'Hear whether the offer suits him', nextStepOn: addDays(today, 1) },
    { sponsor: 'snowmelt', contactedOn: ago(4), how: 'visit', withWhom: 'Elspeth Moor', what: 'Asks whether the table may stand beside the doors.', nextStep: 'Send the senior night offer to Elspeth for signing', nextStepOn: addDays(today, 2) },
  ];
}

interface DemoOffer {
  sponsor: SponsorKey;
  seller: keyof Market['sellers'];
  kind: ReadKindKey;
  line: Pick<NonNullable<OfferDto['readLines']>[number], 'counting' | 'reads'> & Partial<NonNullable<OfferDto['readLines']>[number]>;
  offer: Pick<OfferDto, 'title' | 'priceCents' | 'startsOn' | 'endsOn' | 'lapsesOn'> & Partial<OfferDto>;
  /** days ago; a draft where it was not put yet */
  putDaysAgo?: number;
  declined?: string;
}

function offers({ calendar }: Story, games: Games): DemoOffer[] {
  const { today, seasonEndsOn: endsOn } = calendar;
  const seniors = calendar.gameDay(8);
  return [
    {
      ...{ sponsor: 'snowmelt', seller: 'boosters', kind: 'concession', putDaysAgo: 4 },
      line: { counting: 'perNight', reads: 1 },
      offer: {
        ...{ title: 'Senior night table and read', priceCents: 11_000, startsOn: seniors, endsOn: seniors, lapsesOn: addDays(today, 5) },
        benefitLines: [{ name: 'Display table in the lobby', quantity: 1, rateCents: 7_500, earns: 'onDelivery', dueOn: seniors }],
        note: 'Elspeth asks whether the table may stand beside the doors.',
      },
    },
    {
      ...{ sponsor: 'okafor', seller: 'athletics', kind: 'timeOut', putDaysAgo: 6 },
      line: { counting: 'perTerm', reads: 8, levels: ['varsity'] },
      offer: { title: 'Time-outs to the end of the season', priceCents: 18_000, startsOn: today, endsOn, lapsesOn: addDays(today, 12), years: 2, increaseBasisPoints: 300 },
    },
    {
      ...{ sponsor: 'mirabel', seller: 'boosters', kind: 'timeOut' },
      line: { counting: 'perTerm', reads: 8 },
      offer: { title: 'Time-outs after the turn of the season', priceCents: 19_000, startsOn: today, endsOn, lapsesOn: addDays(today, 20) },
    },
    {
      ...{ sponsor: 'pinyon', seller: 'athletics', kind: 'quarter', putDaysAgo: 10, declined: 'Has the programs of the boosters already, and that is enough for this season.' },
      line: { counting: 'perTerm', reads: 1, pinnedGameIds: [games['fourth']!.gameId] },
      offer: { title: 'Pinyon Print Works Night', priceCents: 6_000, startsOn: today, endsOn, lapsesOn: addDays(today, 6) },
    },
  ];
}

/** Calls and offers of the last weeks. */
export async function tellSelling(story: Story, { seasonId }: SeasonPlaces, market: Market, games: Games): Promise<void> {
  const callerPersonId = story.visitor('director').personId;
  for (const { sponsor, ...form } of words(story)) {
    await story.on(form.contactedOn, async () => {
      const { version } = await story.of(SponsorService).one(market.sponsors[sponsor]);
      await story.of(SponsorService).change(market.sponsors[sponsor], version, { callerPersonId });
      await story.of(SponsorContacts).add(market.sponsors[sponsor], form);
    });
  }
  for (const { sponsor, seller, kind, line, offer, putDaysAgo, declined } of offers(story, games)) {
    const id = newId();
    const on = addDays(story.calendar.today, -(putDaysAgo ?? 1));
    const { id: readKindId, cents: rateCents } = market.kinds[kind];
    await story.on(on, async () => {
      await story.of(OfferService).add({ id, seasonId, sponsorId: market.sponsors[sponsor], sellerId: market.sellers[seller], payerId: market.payers[sponsor], readLines: [{ readKindId, rateCents, ...line }], ...offer });
      if (putDaysAgo) await story.of(OfferPutting).markPut(id, { putOn: on });
    });
    if (declined) await story.on(addDays(on, 3), () => story.of(OfferLife).decline(id, { reason: declined }));
  }
}
