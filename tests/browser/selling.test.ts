import { describe, expect, test } from 'vitest';
import { addDays } from '../../server/domain/day.ts';
import { dayAt, instantOf } from '../../server/domain/instant.ts';
import { aPage, field, open, press, write } from '../support/browser-page.ts';
import { aDepartment } from '../support/department.ts';
import { aLaterSeason, aSignedContract } from '../support/season.ts';

const TODAY = dayAt(instantOf(new Date().toISOString()), 'America/Denver');

describe('who to call this week', () => {
  test('a call that is written down is done, and its next step stands in the list', async () => {
    const department = await aDepartment();
    const { director } = department;
    const category = await director.make('/api/sponsor-categories', { name: 'Ice cream' });
    const creamery = await director.make('/api/sponsors', { name: 'Snowmelt Creamery', categoryId: category.id, contactName: 'Siobhán Orr', phone: '+1 970 555 0142', nextStep: 'Ask about the concession read', nextStepOn: addDays(TODAY, -4) });
    const page = await aPage({ visitor: director });
    await open(page, '/calls', 'Who to call');
    const overdue = page.getByRole('region', { name: 'Overdue' }).or(page.locator('section', { has: page.getByRole('heading', { name: 'Overdue' }) })).first();
    await overdue.getByText('Ask about the concession read').waitFor();
    expect(await overdue.getByRole('link', { name: '+1 970 555 0142' }).getAttribute('href')).toBe('tel:+19705550142');

    await press(overdue, 'Write down the call');
    const dialog = page.getByRole('dialog');
    expect(await field(dialog, 'With whom').inputValue()).toBe('Siobhán Orr');
    await write(dialog, { 'What was said': 'Wants twelve reads at halftime', 'Next step': 'Bring the offer', On: TODAY });
    await press(dialog, 'Write it down');
    await page.getByText('“Wants twelve reads at halftime”').waitFor();
    expect(await page.getByRole('heading', { name: 'Overdue' }).count()).toBe(0);
    await page.getByRole('heading', { name: /^Today, / }).waitFor();
    expect(await director.look(`/api/sponsors/${creamery.id}`)).toMatchObject({ nextStep: 'Bring the offer', nextStepOn: TODAY, lastContactOn: TODAY });
  });
});

describe('a game that is to be cancelled', () => {
  test('is shown with what it does to every contract before it is confirmed', async () => {
    const department = await aDepartment();
    const { director, bookkeeper } = department;
    const season = await aLaterSeason(department, 2);
    const commitments = [{ readKindId: season.readKinds.concession, counting: 'perGame', reads: 2, rateCents: 4_000 }];
    const contract = await aSignedContract(department, season, { title: 'Concession reads', priceCents: 20_000, billingPlan: { kind: 'inFull', on: '2026-11-20' }, commitments });
    await bookkeeper.make('/api/invoices', { contractId: contract.id, throughDay: '2026-11-30', issuedOn: '2026-11-23' });
    await director.make('/api/plan/spread', { seasonId: season.seasonId });
    const page = await aPage({ visitor: director });
    await open(page, `/games/${season.games[1]!.gameId}/show`, 'Herons at Kestrels');
    await press(page, 'Cancel the game');
    const dialog = page.getByRole('dialog');
    await dialog.getByText('Concession read: 2 reads are credited, $100.00; 2 planned reads lose their places.').waitFor();
    await dialog.getByText(/Tamarack Ridge Athletics writes a credit memo of \$105\.00, \$5\.00 of it tax, on invoice TR-2027-0001\./).waitFor();
    await dialog.getByText('Afterwards every read of the season still finds a place.').waitFor();
    expect((await director.look('/api/credit-memos')).total).toBe(0);

    await write(dialog, { Why: 'Ice on the roads' });
    await press(dialog, 'Cancel the game');
    await page.getByText('The game is cancelled.').waitFor();
    const { data } = await director.look('/api/credit-memos');
    expect(data.map((memo: { grossCents: number }) => memo.grossCents)).toEqual([10_500]);

    await press(page, 'Replan the season');
    await press(page.getByRole('dialog'), 'Work it out');
    await page.waitForURL(/#\/plan-proposals\/[0-9a-f-]{36}\/show/);
    const proposals = await director.look(`/api/plan-proposals?seasonId=${season.seasonId}`);
    expect(proposals.data.map((one: { kind: string; because: string }) => [one.kind, one.because])).toEqual([['replan', 'Herons at Kestrels was cancelled']]);
  });
});
