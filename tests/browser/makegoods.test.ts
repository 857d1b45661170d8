import { expect, test } from 'vitest';
import { aPage, choose, open, press, settled, write } from '../support/browser-page.ts';
import { aDepartment } from '../support/department.ts';
import { picture } from '../support/pictures.ts';
import { aShortContract, giveReplacements } from '../support/short-contract.ts';

test('a director proposes game balls for missed reads, records the yes, and sees on which night each of them was settled', async () => {
  const short = await aShortContract(await aDepartment());
  const { director } = short.department;
  const page = await aPage({ visitor: director });
  await open(page, `/contracts/${short.contractId}/show?tab=credits`, 'Game balls and concession reads');
  await page.getByText('7 reads owed. 7 reads can no longer be given as promised.').waitFor();
  await picture(page, 'missed-reads');

  await press(page, 'Propose a remedy');
  const dialog = page.getByRole('dialog');
  await dialog.getByRole('radio', { name: /^4 more|^7 more/ }).waitFor();
  for (const box of (await dialog.getByRole('checkbox', { name: /no game is left/ }).all()).slice(0, 3)) await box.uncheck();
  await dialog.getByRole('radio', { name: '2 × Sponsored game ball – worth $150.00 by the rate card' }).or(dialog.getByRole('radio', { name: /^2 × Sponsored game ball/ })).first().check();
  await picture(page, 'propose');
  await press(dialog, 'Propose it');
  await page.getByText('2 reads of another kind (Sponsored game ball) for 4 missed reads (Concession read).').first().waitFor();
  await picture(page, 'proposed');

  await open(page, '/makegood-proposals', 'Makegoods');
  await page.getByText('Waiting for an answer').first().waitFor();
  await picture(page, 'makegoods');
  const [proposal] = (await director.look('/api/makegood-proposals')).data;
  await open(page, `/makegood-proposals/${proposal.id}/show`, 'Makegood for Juniper & Pike Hardware');
  await press(page, 'Record that it is accepted');
  await write(dialog, { 'Who answered for the sponsor': 'Hazel Juniper' });
  await press(dialog, 'It is accepted');
  await page.getByText('Agreed, planned').waitFor();
  await page.getByText('Still to come').first().waitFor();
  await picture(page, 'agreed');

  await giveReplacements(short, 2);
  await page.reload();
  await settled(page, 'Makegood for Juniper & Pike Hardware');
  await page.getByText('2 of 2 given, 2 with a place; 4 of 4 missed reads settled').waitFor();
  expect(await page.getByRole('link', { name: 'Dec 11, 2026' }).count()).toBe(4);
  await picture(page, 'traced');
});

test('a question of a sponsor stands on the director’s list until it is answered in words', async () => {
  const short = await aShortContract(await aDepartment());
  const { director } = short.department;
  const [read] = await short.department.ask('select entry_id from counted_read where commitment_id = $1 limit 1', [short.commitmentId]);
  await short.department.ask(
    `insert into read_dispute (department_id, id, sponsor_id, contract_id, commitment_id, night_id, game_id, entry_id, asked_by_name, what, asked_at)
      values ($1, gen_random_uuid(), $2, $3, $4, $5, $6, $7, 'Hazel Juniper', 'We sat in the front row and did not hear it.', now())`,
    [short.department.id, short.season.sponsorId, short.contractId, short.commitmentId, short.season.games[0]!.nightId, short.season.games[0]!.gameId, read!['entry_id']],
  );
  const page = await aPage({ visitor: director });
  await open(page, '/read-disputes', 'Disputes');
  await page.getByText('To be answered').first().waitFor();
  await picture(page, 'disputes');
  await page.getByRole('link', { name: /2026/ }).first().click();
  await settled(page, 'Question of Juniper & Pike Hardware');
  await press(page, 'Answer');
  const dialog = page.getByRole('dialog');
  await choose(dialog, { 'What becomes of the read': 'The sponsor is right: the read is taken back' });
  await write(dialog, { 'What the sponsor is told': 'You are right: the microphone was off.' });
  await press(dialog, 'Send the answer');
  await page.getByText('You are right: the microphone was off.').waitFor();
  await picture(page, 'answered');
  await expect.poll(() => short.standing(), { timeout: 20_000 }).toMatchObject({ given: 32, owed: 8 });
});
