import { expect, test } from 'vitest';
import { aPage, choose, open, press, settled, write } from '../support/browser-page.ts';
import { aDepartment } from '../support/department.ts';
import { aContract, aLaterSeason } from '../support/season.ts';

test('a director makes a sponsor the only one of its kind, and a rival is signed only by an exception that names who approved it', async () => {
  const department = await aDepartment();
  const { director } = department;
  const season = await aLaterSeason(department, 1);
  const first = await aContract(department, season);
  const page = await aPage({ visitor: director });
  await open(page, `/contracts/${first.id}`, `Change ${first.title}`);
  await press(page, 'Add an exclusive right');
  await page.getByText('To be the only sponsor of a category is fine.').waitFor();
  await choose(page, { Category: 'Hardware' });
  await press(page, 'Save');
  await settled(page, first.title);
  await page.getByText('Hardware: Nov 20, 2150 to Mar 13, 2151').waitFor();
  await press(page, 'Sign');
  await write(page.getByRole('dialog'), { 'Who signed for the sponsor': 'Hazel Juniper' });
  await press(page.getByRole('dialog'), 'Sign');
  await page.getByText('The contract is signed.').waitFor();

  const sponsor = await director.make('/api/sponsors', { name: 'Quarry Road Hardware', categoryId: season.categoryId });
  const payer = await director.make('/api/payers', { name: 'Quarry Road Hardware', sponsorId: sponsor.id });
  const rival = await aContract(department, { ...season, sponsorId: sponsor.id, payerId: payer.id }, { title: 'Quarry Road, reads' });
  await open(page, `/contracts/${rival.id}/show`, rival.title);
  await press(page, 'Sign');
  const dialog = page.getByRole('dialog');
  await dialog.getByText('Juniper & Pike Hardware has the exclusive right to Hardware through Mar 13').waitFor();
  await write(dialog, { 'Who signed for the sponsor': 'Ines Quarry', 'Why an exception': 'Both stores agreed', 'Who approved it': 'School board' });
  await press(dialog, 'Sign');
  await page.getByText(/Past Game balls and concession reads: Both stores agreed\. Approved by School board/).waitFor();
  expect((await director.look(`/api/contracts/${rival.id}`)).term.state).toBe('signed');
});

test('a director says how many reads halftime holds, and goes back to the sport’s profile', async () => {
  const department = await aDepartment();
  const { director } = department;
  await aLaterSeason(department, 0);
  const page = await aPage({ visitor: director });
  await open(page, '/window-places', 'Places in windows');
  const halftime = page.getByRole('row', { name: /Halftime/ });
  await press(halftime, 'Say otherwise');
  await write(page.getByRole('dialog'), { 'Reads in one such window': '5' });
  await press(page.getByRole('dialog'), 'Keep it');
  await halftime.getByText('5 reads').waitFor();
  await press(halftime, 'Go back');
  await press(page.getByRole('dialog'), 'Go back');
  await halftime.getByText('The same').waitFor();
  expect((await director.look('/api/window-places')).total).toBe(0);
});
