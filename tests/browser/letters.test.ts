import { expect, test, vi } from 'vitest';
import { WIDTHS, aPage, choose, field, open, press, settled, write } from '../support/browser-page.ts';
import { application } from '../support/database.ts';
import { aDepartment } from '../support/department.ts';
import { aSeasonWithAddresses, anInvoiceDue, letterIs } from '../support/letters.ts';

vi.setConfig({ testTimeout: 90_000 });

test('the bookkeeper sees an invoice’s letter before it goes, changes its words, sends it, and reads in the log that it went', async () => {
  const department = await aDepartment();
  const season = await aSeasonWithAddresses(department);
  const invoice = await anInvoiceDue(department, season, -10);
  const page = await aPage({ visitor: department.bookkeeper, width: WIDTHS.phone });
  await open(page, `/invoices/${invoice.id}/show`, `Invoice ${invoice.number}`);
  await press(page, 'Send…');
  const dialog = page.getByRole('dialog', { name: 'Send this letter?' });
  expect(await field(dialog, 'To').inputValue()).toBe('bills@juniper.example');
  await write(dialog, { Subject: 'Your invoice for the game balls' });
  await dialog.getByText(`Attached: ${invoice.number}.pdf`).waitFor();
  await press(dialog, 'Send');
  await page.getByText('The letter is on its way.').waitFor();
  const { data } = await department.bookkeeper.look('/api/messages');
  await letterIs(department, application, data[0].id, 'sent');
  await page.setViewportSize({ width: WIDTHS.desk, height: 900 });
  await open(page, '/messages', 'Letters');
  await page.getByRole('link', { name: 'Your invoice for the game balls' }).click();
  await settled(page, 'Your invoice for the game balls');
  await page.getByText('Handed over', { exact: true }).waitFor();
  await press(page, 'It came back');
  await write(page.getByRole('dialog'), { 'What the mail that came back says': 'The mailbox is full' });
  await press(page.getByRole('dialog'), 'It came back');
  await page.getByText('Came back', { exact: true }).first().waitFor();
});

test('a letter that went already goes once more only with a reason', async () => {
  const department = await aDepartment();
  const season = await aSeasonWithAddresses(department);
  const invoice = await anInvoiceDue(department, season, -10);
  await department.bookkeeper.make('/api/messages', { kind: 'invoice', aboutId: invoice.id });
  const page = await aPage({ visitor: department.bookkeeper });
  await open(page, `/invoices/${invoice.id}/show`, `Invoice ${invoice.number}`);
  await press(page, 'Send…');
  const dialog = page.getByRole('dialog');
  await dialog.getByText('This letter was written once already.').waitFor();
  await press(dialog, 'Send');
  await dialog.getByText('This is needed.').waitFor();
  await write(dialog, { 'Why once more': 'They cannot find it' });
  await press(dialog, 'Send');
  await page.getByText('The letter is on its way.').waitFor();
  expect((await department.bookkeeper.look('/api/messages')).data[0].againBecause).toBe('They cannot find it');
});

test('the reminders of the day stand above the letters before they go, and the director says on which days they go', async () => {
  const department = await aDepartment();
  const season = await aSeasonWithAddresses(department);
  const late = await anInvoiceDue(department, season, 9);
  const page = await aPage({ visitor: department.director });
  await open(page, '/department', 'Department');
  await choose(page, { 'Reminders go out': '3 days after the due day' });
  await page.keyboard.press('Escape');
  await press(page, 'Save');
  await page.getByText('The department is saved.').waitFor();
  const { settings } = await department.director.look('/api/department');
  expect([...settings.reminderDays].sort((one: number, other: number) => one - other)).toEqual([3, 7, 30, 60]);
  await open(page, '/messages', 'Letters');
  await page.getByRole('link', { name: late.number, exact: true }).waitFor();
  await press(page, 'Send them now');
  await press(page.getByRole('dialog'), 'Send them now');
  await page.getByText('The reminders are on their way.').waitFor();
  await page.getByRole('link', { name: `Reminder: invoice ${late.number} from Tamarack Ridge Athletics` }).waitFor();
});
