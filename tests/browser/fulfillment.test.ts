import { expect, test } from 'vitest';
import { aPage, open, press } from '../support/browser-page.ts';
import { aDepartment } from '../support/department.ts';
import { picture } from '../support/pictures.ts';
import { TableDevice, aSeason, aSignedContract } from '../support/season.ts';
import type { Season } from '../support/season.ts';

test('a director sees on the contract what was promised, given and missed, night by night, and how the rest is likely to go', async () => {
  const department = await aDepartment();
  const season = await aSeason(department, 4);
  const { director, announcer } = department;
  const contract = await aSignedContract(department, season, {
    title: 'Concession reads and bank shots',
    commitments: [
      { readKindId: season.readKinds.concession, counting: 'perTerm', reads: 8, rateCents: 4_000, leastPerGame: 2 },
      { readKindId: season.readKinds.bankShot, counting: 'onOccurrence', readsAtLeast: 2, readsAtMost: 9, rateCents: 1_000 },
    ],
    benefits: [{ name: 'Banner on the north wall', quantity: 1, rateCents: 20_000, earns: 'onDelivery', dueOn: '2026-12-01' }],
  });
  const [concession, bankShots] = contract.commitments.map((one: { id: string }) => one.id) as [string, string];
  const page = await aPage({ visitor: director });
  await open(page, `/contracts/${contract.id}/show?tab=fulfillment`, contract.title);
  await page.getByText('8 reads promised: 0 given, 8 still owed.').waitFor();
  await page.getByText('No read of this contract is logged or planned yet.').waitFor();
  await picture(page, 'fulfillment-before');

  await director.make(`/api/contracts/${contract.id}/benefits/${contract.benefits[0].id}/deliveries`, { deliveredOn: '2026-11-30', quantity: 1, proof: 'Photo of the wall' });
  const device = new TableDevice();
  const [first, second, third] = season.games as [Season['games'][number], Season['games'][number], Season['games'][number]];
  const log = async ({ nightId }: Season['games'][number], entries: unknown[]) => announcer.make(`/api/nights/${nightId}/log`, { deviceId: device.deviceId, entries });
  const shot = device.entry({ kind: 'happening', gameId: first.gameId, teamId: season.teamId, playerNumber: '3', period: '2nd quarter', clock: '4:10', detail: { happening: 'bankShot' } });
  const mention = device.entry({ kind: 'mention', outcome: 'given', gameId: first.gameId, commitmentId: bankShots, happeningEntryId: shot.id });
  await log(first, [device.read(concession, first.gameId, 1), device.read(concession, first.gameId, 2), shot, mention]);
  await director.make(`/api/nights/${first.nightId}/sign-off`, { overrideReason: 'the test does not wait for the night', attendance: 412 });
  await log(second, [device.read(concession, second.gameId, 1), device.read(concession, second.gameId, 2, 'notRead', 'injury')]);
  await director.make(`/api/nights/${second.nightId}/sign-off`, { overrideReason: 'the test does not wait for the night' });
  await log(third, [device.read(concession, third.gameId, 1)]);

  await page.reload();
  await page.getByText('8 reads promised: 3 given, 5 still owed. 2 of 4 games played; 4 should have been given by now.').waitFor();
  await page.getByRole('heading', { name: 'Games with fewer than 2 reads' }).waitFor();
  const nights = page.getByRole('region', { name: 'Reads night by night' });
  await nights.getByText('Not read: an injury').waitFor();
  await nights.getByText('Read, not signed off yet').waitFor();
  await nights.getByText('412, as signed off').first().waitFor();
  await page.getByText('Nov 30, 2026: 1, Photo of the wall').waitFor();
  expect(await page.getByText('The chance that everything still owed is given is').count()).toBe(2);
  const pace = page.getByRole('figure', { name: 'Pace of Concession read' });
  const dashesOf = (series: number) => pace.locator(`path[data-series="${series}"][fill=none]`).evaluate((line) => getComputedStyle(line).strokeDasharray);
  expect(await dashesOf(0)).toBe('none');
  expect(await dashesOf(1)).toMatch(/px/);
  await press(pace, 'Show as a table');
  await page.getByRole('region', { name: 'Pace of Concession read by day' }).waitFor();
  await picture(page, 'fulfillment');
});
