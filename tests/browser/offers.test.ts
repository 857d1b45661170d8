import { expect, test } from 'vitest';
import { aPage, choose, field, open, paperFrom, press, settled, write } from '../support/browser-page.ts';
import { aDepartment } from '../support/department.ts';
import { anOpenOffer, inDays } from '../support/offers.ts';
import { aLaterSeason, aSeason } from '../support/season.ts';

test('a director writes an offer from the sponsor’s page and sees what each read is worth before it is kept', async () => {
  const department = await aDepartment();
  const { director } = department;
  const season = await aLaterSeason(department, 3);
  await director.make('/api/rate-card-lines', { seasonId: season.seasonId, readKindId: season.readKinds.gameBall, priceCents: 7500 });
  const page = await aPage({ visitor: director });
  await open(page, `/sponsors/${season.sponsorId}/show`, 'Juniper & Pike Hardware');
  await page.getByRole('link', { name: 'New offer' }).click();
  await settled(page, 'New offer');
  await write(page, { Title: 'Game balls, two years', 'Price of the whole term': '700.01' });
  await press(page, 'Add a line of reads');
  await choose(page, { 'Read kind': 'Sponsored game ball', Counted: 'In every game' });
  await write(page, { 'Reads in each game': '2' });
  await press(page, 'Take $75.00 from the rate card');
  const worth = page.getByRole('region', { name: 'What each line is worth' });
  await worth.getByText('5 × $116.67, 1 × $116.66').waitFor();
  await page.getByText('The lines add up to $700.01.').waitFor();
  await choose(page, { For: '2 years' });
  await write(page, { 'Increase from year to year, percent': '2.5' });
  await page.getByText('Year 1: $700.01 · Year 2: $717.51.').waitFor();
  await choose(page, { 'The price goes up and down with': 'Attendance' });
  await page.getByText('ask your tax adviser').waitFor();
  await press(page, 'Keep as a draft');
  await settled(page, 'Game balls, two years');
  await page.getByText('This is a draft.').waitFor();
  const [offer] = (await director.look('/api/offers')).data;
  expect(offer).toMatchObject({ state: 'draft', sponsorId: season.sponsorId, sellerId: season.sellerId, priceCents: 70_001, years: 2, increaseBasisPoints: 250, priceVariesWith: 'attendance', readLines: [{ counting: 'perGame', reads: 2, rateCents: 7500 }] });
  const stored = await director.look(`/api/offers/${offer.id}`);
  expect(stored.values[0].each).toEqual([{ count: 5, cents: 11_667 }, { count: 1, cents: 11_666 }]);

  await page.getByRole('link', { name: 'Edit', exact: true }).click();
  await settled(page, 'Change Game balls, two years');
  await write(page, { 'Price of the whole term': '600' });
  await choose(page, { For: 'One year' });
  await press(page, 'Save');
  await settled(page, 'Game balls, two years');
  expect(await director.look(`/api/offers/${offer.id}`)).toMatchObject({ priceCents: 60_000, years: 1, increaseBasisPoints: 0, readLines: [{ reads: 2 }] });

  await press(page, 'Put to the sponsor');
  await press(page, 'Put it');
  await page.getByText('The offer lies with the sponsor now.').waitFor();
  await page.getByText('Its places are held').first().waitFor();
  const put = await director.look(`/api/offers/${offer.id}`);
  expect([put.state, put.holdsNow, put.number.slice(-4)]).toEqual(['open', true, '0001']);
});

test('an open offer is extended, printed and signed, and its page leads to the contract', async () => {
  const department = await aDepartment();
  const { director } = department;
  const season = await aSeason(department, 3);
  const offer = await anOpenOffer(department, season, { title: 'Game balls for the winter', lapsesOn: inDays(3), payerId: null });
  const page = await aPage({ visitor: director });
  await open(page, '/offers', 'Offers');
  await page.getByText('1 offer holds places and lapses within a week:').waitFor();
  await page.getByRole('link', { name: 'Game balls for the winter' }).click();
  await settled(page, 'Game balls for the winter');
  await page.getByText('3 more days').first().waitFor();
  await press(page, 'Extend');
  await press(page, 'Extend it');
  await page.getByText('10 more days').first().waitFor();
  expect((await paperFrom(page, 'Print to sign (PDF)')).name).toBe('offer.pdf');
  await press(page, 'Sign');
  const dialog = page.getByRole('dialog');
  await field(dialog, 'Who signed for the sponsor').fill('Hazel Juniper');
  await press(dialog, 'Sign');
  await page.getByText('The contract is signed. Its reads are owed.').waitFor();
  await settled(page, 'Game balls for the winter');
  expect(page.url()).toContain('/contracts/');
  expect(await director.look(`/api/offers/${offer.id}`)).toMatchObject({ state: 'accepted', contractNumber: 'C-2027-0001' });
});

test('an offer that the sponsor declines says why, and is offered again as a new draft', async () => {
  const department = await aDepartment();
  const { director } = department;
  const season = await aSeason(department, 0);
  await anOpenOffer(department, season, { title: 'Banner and reads' });
  const page = await aPage({ visitor: director });
  await open(page, '/offers', 'Offers');
  await page.getByRole('link', { name: 'Banner and reads' }).click();
  await settled(page, 'Banner and reads');
  await press(page, 'Declined');
  await write(page.getByRole('dialog'), { Why: 'Too dear this year' });
  await press(page, 'Write it down');
  await page.getByText(': Too dear this year').waitFor();
  await press(page, 'Offer again');
  await press(page, 'Make the draft');
  await settled(page, 'Change Banner and reads');
  expect((await director.look('/api/offers')).data.map((offer: any) => offer.state).sort()).toEqual(['declined', 'draft']);
});

test('a package fills in the form of an offer, and everything may still be changed', async () => {
  const department = await aDepartment();
  const { director } = department;
  const season = await aSeason(department, 2);
  await director.make('/api/packages', {
    seasonId: season.seasonId, name: 'Perch package', priceCents: 90_000,
    lines: [{ readKindId: season.readKinds.gameBall, counting: 'perTerm', quantity: 4, rateCents: 7500 }, { benefitName: 'Banner at the Perch', quantity: 1, rateCents: 20_000 }],
  });
  const page = await aPage({ visitor: director, width: 360 });
  await open(page, `/offers/create?source=${encodeURIComponent(JSON.stringify({ sponsorId: season.sponsorId }))}`, 'New offer');
  await page.getByRole('link', { name: 'Perch package, $900.00' }).click();
  await page.getByText('The lines add up to $900.00.').waitFor();
  await write(page, { 'Reads in all': '6' });
  await press(page, 'Keep as a draft');
  await settled(page, 'Perch package');
  const [offer] = (await director.look('/api/offers')).data;
  expect(offer).toMatchObject({ packageName: 'Perch package', sponsorId: season.sponsorId, priceCents: 90_000, readLines: [{ reads: 6, rateCents: 7500 }], benefitLines: [{ name: 'Banner at the Perch', quantity: 1, rateCents: 20_000 }] });
});
