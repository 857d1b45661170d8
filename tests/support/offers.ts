import { addDays } from '../../server/domain/day.ts';
import type { Day } from '../../server/domain/day.ts';
import { dayAt, instantOf } from '../../server/domain/instant.ts';
import type { Department } from './department.ts';
import type { Season } from './season.ts';

/** What an offer is written from; the rest is as below. */
export type Offered = Record<string, unknown>;

/** So many days from today by the department's calendar. */
export function inDays(days: number): Day {
  return addDays(dayAt(instantOf(new Date().toISOString()), 'America/Denver'), days);
}

export function offerForm(season: Season, offered: Offered = {}): Record<string, unknown> {
  return {
    sponsorId: season.sponsorId,
    sellerId: season.sellerId,
    payerId: season.payerId,
    seasonId: season.seasonId,
    title: 'Game balls and concession reads',
    priceCents: 70_000,
    startsOn: season.startsOn,
    endsOn: season.endsOn,
    lapsesOn: inDays(14),
    readLines: [
      { readKindId: season.readKinds.gameBall, counting: 'perTerm', reads: 6, rateCents: 7500 },
      { readKindId: season.readKinds.concession, counting: 'perTerm', reads: 8, rateCents: 4000 },
    ],
    ...offered,
  };
}

/** A draft of an offer to the season's sponsor. */
export async function anOffer({ director }: Department, season: Season, offered: Offered = {}): Promise<any> {
  return director.make('/api/offers', offerForm(season, offered));
}

/** An offer that lies with the sponsor since today. */
export async function anOpenOffer(department: Department, season: Season, offered: Offered = {}): Promise<any> {
  const draft = await anOffer(department, season, offered);
  await department.ask('update offer set put_on = $3, version = version + 1 where department_id = $1 and id = $2', [department.id, draft.id, inDays(0)]);
  return department.director.look(`/api/offers/${draft.id}`);
}

/** The same, as it stands when its last day is over: nobody waits for that day in a test. */
export async function aLapsedOffer(department: Department, season: Season, offered: Offered = {}): Promise<any> {
  const open = await anOpenOffer(department, season, offered);
  await department.ask('update offer set put_on = $3, lapses_on = $4 where department_id = $1 and id = $2', [department.id, open.id, inDays(-15), inDays(-1)]);
  return department.director.look(`/api/offers/${open.id}`);
}
