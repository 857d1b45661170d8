import { expect } from 'vitest';
import { addDays } from '../../server/domain/day.ts';
import type { Day } from '../../server/domain/day.ts';
import { dayAt, instantOf } from '../../server/domain/instant.ts';
import type { Application } from './database.ts';
import type { Department } from './department.ts';
import { aSeason } from './season.ts';
import type { Season } from './season.ts';

export const todayOf = (): Day => dayAt(instantOf(new Date().toISOString()), 'America/Denver');

/** A season whose payer and sponsor have addresses, and whose school says whom to answer. */
export async function aSeasonWithAddresses(department: Department, gameCount = 0): Promise<Season> {
  const { director } = department;
  const season = await aSeason(department, gameCount);
  await changed(department, `/api/payers/${season.payerId}`, { email: 'bills@juniper.example' });
  await changed(department, `/api/sponsors/${season.sponsorId}`, { email: 'hazel@juniper.example', contactName: 'Hazel Juniper' });
  await changed(department, `/api/sellers/${season.sellerId}`, { contactName: 'Ottoline Brandt', contactEmail: 'office@tamarack.example', contactPhone: '(303) 555-0142', termsDays: 0 });
  expect((await director.look(`/api/payers/${season.payerId}`)).email).toBe('bills@juniper.example');
  return season;
}

export async function changed({ director }: Department, path: string, form: Record<string, unknown>): Promise<void> {
  const { version } = await director.look(path);
  expect((await director.patch(path, form, { version })).status).toBe(200);
}

/** An invoice of $700.00 and its tax that was due so many days ago; below zero: that will be. */
export async function anInvoiceDue(department: Department, season: Season, daysAgo: number, title = 'Game balls'): Promise<any> {
  const { director, bookkeeper } = department;
  const on = addDays(todayOf(), -daysAgo);
  const contract = await director.make('/api/contracts', {
    sponsorId: season.sponsorId, sellerId: season.sellerId, payerId: season.payerId, title,
    term: { seasonId: season.seasonId, startsOn: addDays(on, -5), endsOn: addDays(on, 120), priceCents: 70_000, billingPlan: { kind: 'inFull', on } },
    commitments: [{ readKindId: season.readKinds.gameBall, counting: 'perTerm', reads: 6, rateCents: 7500 }],
  });
  await director.make(`/api/contracts/${contract.id}/sign`, { signedOn: addDays(on, -5), signedByName: 'Hazel Juniper' });
  return bookkeeper.make('/api/invoices', { contractId: contract.id, throughDay: on, issuedOn: on });
}

/** Waits until a letter is in this state; tries that wait for their time are brought forward. */
export async function letterIs(department: Department, application: Application, id: string, state: string): Promise<any> {
  const until = Date.now() + 30_000;
  for (;;) {
    await application.ownerPool.query(`update job.job set start_after = now() where state = 'retry' and start_after > now() and data ->> 'subjectId' = $1`, [id]);
    const message = await department.bookkeeper.look(`/api/messages/${id}`);
    if (message.state === state) return message;
    if (Date.now() > until) throw new Error(`the letter is ${message.state}: ${JSON.stringify(message.events)}`);
    await new Promise((done) => setTimeout(done, 100));
  }
}
