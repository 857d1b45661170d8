import { describe, expect, test } from 'vitest';
import { addDays } from '../../server/domain/day.ts';
import { dayAt, instantOf } from '../../server/domain/instant.ts';
import { aPage, field, open, press, write } from '../support/browser-page.ts';
import { aDepartment } from '../support/department.ts';

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
