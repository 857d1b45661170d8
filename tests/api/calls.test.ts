import { describe, expect, test } from 'vitest';
import { addDays } from '../../server/domain/day.ts';
import type { Day } from '../../server/domain/day.ts';
import { dayAt, instantOf } from '../../server/domain/instant.ts';
import { weekOf } from '../../server/domain/sponsorship/call-list.ts';
import { aDepartment } from '../support/department.ts';
import type { Department } from '../support/department.ts';

const today = (): Day => dayAt(instantOf(new Date().toISOString()), 'America/Denver');

async function aProspect({ director }: Department, name: string, more: Record<string, unknown> = {}) {
  const categories = await director.look('/api/sponsor-categories');
  const category = categories.data[0] ?? (await director.make('/api/sponsor-categories', { name: 'Hardware' }));
  return director.make('/api/sponsors', { name, categoryId: category.id, phone: '+1 970 555 0142', ...more });
}

describe('a contact with a sponsor', () => {
  test('moves the last contact and the next step, and stays in the history', async () => {
    const department = await aDepartment();
    const { director } = department;
    const sponsor = await aProspect(department, 'Copperline Credit Union', { nextStep: 'Ask for a meeting', nextStepOn: addDays(today(), -3) });
    await director.make(`/api/sponsors/${sponsor.id}/contacts`, { contactedOn: today(), how: 'call', withWhom: 'Xochitl Marlowe', what: 'Wants the bank-shot mention', nextStep: 'Bring the rate card', nextStepOn: addDays(today(), 1) });
    const after = await director.look(`/api/sponsors/${sponsor.id}`);
    expect(after).toMatchObject({ lastContactOn: today(), nextStep: 'Bring the rate card', nextStepOn: addDays(today(), 1) });
    await director.make(`/api/sponsors/${sponsor.id}/contacts`, { contactedOn: addDays(today(), -10), how: 'visit', what: 'Met at the store' });
    const { data } = await director.look(`/api/sponsors/${sponsor.id}/contacts`);
    expect(data.map((one: any) => [one.how, one.what, one.contactedByName?.startsWith('director')])).toEqual([['call', 'Wants the bank-shot mention', true], ['visit', 'Met at the store', true]]);
    expect((await director.look(`/api/sponsors/${sponsor.id}`)).nextStep).toBe('Bring the rate card');
  });

  test('after today is refused', async () => {
    const department = await aDepartment();
    const sponsor = await aProspect(department, 'Copperline Credit Union');
    const { status, body } = await department.director.post(`/api/sponsors/${sponsor.id}/contacts`, { contactedOn: addDays(today(), 1), how: 'call', what: 'Tomorrow' });
    expect([status, body.code]).toEqual([422, 'contact-after-today']);
  });
});

describe('a sponsor that is lost', () => {
  test('keeps why and since when, has no next step, and can be won back once', async () => {
    const department = await aDepartment();
    const { director } = department;
    const sponsor = await aProspect(department, 'Blue Lantern Tire', { nextStep: 'Call again', nextStepOn: today() });
    expect((await director.post(`/api/sponsors/${sponsor.id}/win-back`)).body.code).toBe('sponsor-not-lost');
    const lost = await director.make(`/api/sponsors/${sponsor.id}/lose`, { lostOn: today(), reason: 'The owner sponsors the league this year' });
    expect(lost).toMatchObject({ lostOn: today(), lostReason: 'The owner sponsors the league this year', nextStep: null, nextStepOn: null });
    expect((await director.look('/api/sponsors?isLost=true')).data.map((one: any) => one.name)).toEqual(['Blue Lantern Tire']);
    expect((await director.post(`/api/sponsors/${sponsor.id}/lose`, { lostOn: today(), reason: 'Again' })).body.code).toBe('sponsor-lost-already');
    expect(await director.make(`/api/sponsors/${sponsor.id}/win-back`)).toMatchObject({ lostOn: null, lostReason: null });
  });
});

describe('whom to call this week', () => {
  test('is told with whose call it is, what was said last, and what has no next year', async () => {
    const department = await aDepartment();
    const { director } = department;
    const week = weekOf(today());
    const mine = await aProspect(department, 'Snowmelt Creamery', { nextStep: 'Bring the offer', nextStepOn: addDays(today(), -1), callerPersonId: director.personId });
    await aProspect(department, 'Pinyon Print Works', { nextStep: 'Ask for the logo', nextStepOn: addDays(week.through, 1) });
    await aProspect(department, 'Halvorsen Orthodontics', { nextStep: 'Say thank you' });
    await director.make(`/api/sponsors/${mine.id}/contacts`, { contactedOn: addDays(today(), -2), how: 'message', what: 'Liked the concession read', nextStep: 'Bring the offer', nextStepOn: addDays(today(), -1) });
    const calls = await director.look('/api/calls');
    expect([calls.from, calls.through, calls.today]).toEqual([week.from, week.through, today()]);
    expect(calls.calls.map((call: any) => [call.sponsorName, call.group, call.lastContact?.what ?? null])).toEqual([
      ['Snowmelt Creamery', 'overdue', 'Liked the concession read'], ['Halvorsen Orthodontics', 'noDay', null],
    ]);
    expect(calls.callers).toEqual([{ personId: director.personId, name: expect.stringContaining('director') }]);
    expect((await director.look(`/api/calls?callerPersonId=${director.personId}`)).calls.map((call: any) => call.sponsorName)).toEqual(['Snowmelt Creamery']);
    expect((await director.look('/api/calls?isNobodys=true')).calls.map((call: any) => call.sponsorName)).toEqual(['Halvorsen Orthodontics']);
    const next = await director.look(`/api/calls?weekOf=${addDays(week.through, 1)}`);
    expect(next.calls.map((call: any) => [call.sponsorName, call.group])).toContainEqual(['Pinyon Print Works', 'thisWeek']);
  });

  test('names an offer that lapses soon, and a contract of this season behind which there is nothing', async () => {
    const department = await aDepartment();
    const { director, ask } = department;
    const [creamery, hardware] = [await aProspect(department, 'Snowmelt Creamery'), await aProspect(department, 'Juniper & Pike Hardware')];
    const seller = await director.make('/api/sellers', { name: 'Tamarack Ridge Athletics', numberPrefix: 'TR', taxBasisPoints: 0 });
    const payer = await director.make('/api/payers', { name: 'Juniper & Pike Hardware', sponsorId: hardware.id });
    const season = await director.make('/api/seasons', { name: 'Basketball', sport: 'basketball', startsOn: addDays(today(), -30), endsOn: addDays(today(), 90) });
    const term = (seasonId: string, startsOn: Day, endsOn: Day) => ({ seasonId, startsOn, endsOn, pricing: 'fixed', priceCents: 10_000, billingPlan: { kind: 'inFull', on: startsOn } });
    const contract = await director.make('/api/contracts', {
      sponsorId: hardware.id, sellerId: seller.id, payerId: payer.id, title: 'Banner', term: term(season.id, today(), addDays(today(), 60)), commitments: [],
      benefits: [{ name: 'Banner on the north rail', quantity: 1, rateCents: 10_000, fairValueCents: 0, earns: 'onDelivery' }],
    });
    await director.make(`/api/contracts/${contract.id}/sign`, { signedOn: today(), signedByName: 'Hazel Juniper' });
    await ask(
      `insert into offer (department_id, id, sponsor_id, seller_id, season_id, title, price_cents, billing_plan, starts_on, ends_on, lapses_on, put_on)
       values ($1, gen_random_uuid(), $2, $3, $4, 'Twelve concession reads', 48000, '{"kind":"inFull","on":"2026-12-01"}', $5, $6, $7, $5)`,
      [department.id, creamery.id, seller.id, season.id, today(), addDays(today(), 60), addDays(today(), 7)],
    );
    const shown = async () => (await director.look('/api/calls')).calls.map((call: any) => [call.sponsorName, call.group, call.reasons.map((reason: any) => `${reason.kind} ${reason.title}`)]);
    expect(await shown()).toEqual([['Snowmelt Creamery', 'thisWeek', ['offerLapses Twelve concession reads']], ['Juniper & Pike Hardware', 'ending', ['contractEnds Banner']]]);
    const later = await director.make('/api/seasons', { name: 'Basketball next', sport: 'basketball', startsOn: addDays(today(), 300), endsOn: addDays(today(), 400) });
    await director.make('/api/contracts', { sponsorId: hardware.id, sellerId: seller.id, payerId: payer.id, title: 'Banner again', term: term(later.id, addDays(today(), 300), addDays(today(), 360)), commitments: [], benefits: [] });
    expect((await shown()).map(([name]: string[]) => name)).toEqual(['Snowmelt Creamery']);
  });

  test('cannot be the call of somebody who is not of the department', async () => {
    const department = await aDepartment();
    const sponsor = await aProspect(department, 'Okafor Family Insurance');
    const { status, body } = await department.director.patch(`/api/sponsors/${sponsor.id}`, { callerPersonId: department.stranger.personId }, { version: sponsor.version });
    expect([status, body.code]).toEqual([422, 'unknown-person']);
  });
});
