import { join } from 'node:path';
import { expect, test } from 'vitest';
import { aPage, field, open, press, settled, WIDTHS } from '../support/browser-page.ts';
import { aDepartment } from '../support/department.ts';
import { anOpenOffer } from '../support/offers.ts';
import { aContract, aSeason, aSignedContract } from '../support/season.ts';

/** Where pictures go for whoever wants to look at the page. */
const PICTURES = process.env['PICTURES'];

test('a director looks at what the next season will be, chooses, and rolls the season over', async () => {
  const department = await aDepartment();
  const { director } = department;
  const season = await aSeason(department, 1);
  await director.make('/api/rate-card-lines', { seasonId: season.seasonId, readKindId: season.readKinds.gameBall, priceCents: 7500 });
  await director.make('/api/packages', { seasonId: season.seasonId, name: 'Courtside', priceCents: 60_000, lines: [{ readKindId: season.readKinds.gameBall, counting: 'perTerm', quantity: 6, rateCents: 7500 }] });
  const offer = await anOpenOffer(department, season, { title: 'Game balls for three years', years: 3, increaseBasisPoints: 250 });
  const { contractId } = await director.make(`/api/offers/${offer.id}/accept`, { signedOn: '2026-11-20', signedByName: 'Hazel Juniper' });
  const byGame = await anOpenOffer(department, season, { title: 'A read each game', years: 2, readLines: [{ readKindId: season.readKinds.concession, counting: 'perGame', reads: 1, rateCents: 4000, blackoutDays: ['2026-12-25'] }] });
  await director.make(`/api/offers/${byGame.id}/accept`, { signedOn: '2026-11-20', signedByName: 'Hazel Juniper' });
  const yearly = await aSignedContract(department, season, { title: 'Concession reads' });
  await aContract(department, season, { title: 'Spring banner' });
  const page = await aPage({ visitor: director });
  await open(page, `/seasons/${season.seasonId}/show`, 'Basketball 2026-27');
  await page.getByRole('link', { name: 'Roll over to the next season…' }).click();
  await settled(page, 'Roll over Basketball 2026-27');
  await page.getByText('Year 2 of 3, signed at once as it was agreed.').waitFor();
  expect(await field(page, 'Name').inputValue()).toBe('Basketball 2027-28');
  await field(page, 'Prices higher by, percent').fill('4');
  await page.getByText('$78.00').waitFor();
  for (const [name, width] of Object.entries(WIDTHS)) {
    if (!PICTURES) break;
    await page.setViewportSize({ width, height: 900 });
    await page.waitForTimeout(300);
    await page.screenshot({ path: join(PICTURES, `roll-over-${name}.png`), fullPage: true });
  }
  await page.setViewportSize({ width: WIDTHS.desk, height: 900 });
  await page.getByLabel('For Concession reads').selectOption({ label: 'Leave it' });
  await page.waitForFunction(() => document.querySelector('button[type=submit]:not([disabled])') !== null);
  await press(page, 'Roll the season over');
  await settled(page, 'Basketball 2027-28');
  const next = (await director.look('/api/seasons?sort=-startsOn')).data[0];
  expect(next.followsSeasonId).toBe(season.seasonId);
  expect((await director.look(`/api/contracts?seasonId=${next.id}`)).data.map((one: any) => [one.title, one.term.state]).sort()).toEqual([['A read each game', 'draft'], ['Game balls for three years', 'signed']]);
  expect((await director.look(`/api/contracts/${yearly.id}`)).followedByContractId).toBe(null);
  await open(page, `/contracts/${contractId}/show`, 'Game balls for three years');
  await page.getByText(/C-\d{4}-\d{4}, year 2 of 3/).waitFor();
  await page.getByRole('link', { name: /^C-/ }).first().click();
  await page.getByText(/Year 2 of 3, after C-/).waitFor();
  if (PICTURES) await page.screenshot({ path: join(PICTURES, 'roll-over-contract.png'), fullPage: true });
  await open(page, `/seasons/${season.seasonId}/roll-over`, 'Roll over Basketball 2026-27');
  await page.getByText('This season was rolled over already.').waitFor();
});
