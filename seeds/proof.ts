import { LinkService } from '../server/access/link.service.ts';
import { addDays } from '../server/domain/day.ts';
import type { Day } from '../server/domain/day.ts';
import { instantAt } from '../server/domain/instant.ts';
import { ReadDisputes } from '../server/makegoods/disputes/read-disputes.service.ts';
import { MakegoodProposals } from '../server/makegoods/proposals/makegood-proposals.service.ts';
import { Shortfalls } from '../server/makegoods/shortfalls/shortfalls.service.ts';
import { NightAttendances } from '../server/night/attendance/night-attendance.service.ts';
import { StatementIssuing } from '../server/reports/performance/statement-issuing.service.ts';
import type { Agreement, Agreements } from './contracts.ts';
import type { Games } from './schedule.ts';
import type { Market } from './sponsors.ts';
import type { Story } from './story.ts';

/** A sponsor's statement of performance as the books stood on a day. */
export async function issueStatement(story: Story, { contractId }: Agreement, on: Day): Promise<void> {
  await story.outside(on, () => story.of(StatementIssuing).issue(contractId, on));
}

/** Somebody finds the ticket stubs of a night whose sign-off did not say how many came. */
export async function tellAttendance(story: Story, games: Games): Promise<void> {
  await story.today(() => story.of(NightAttendances).record(games['night2']!.nightId, { attendance: 174, how: 'tickets' }));
}

/** Three reads were missed: two are agreed to be given later, for the third the sponsor is asked; and two questions of sponsors, one of them answered. */
export async function tellMakegoods(story: Story, deals: Agreements): Promise<void> {
  const { calendar } = story;
  const { contractId, commitmentId } = deals.halvorsen;
  const agreedOn = calendar.gameDay(-2);
  await story.on(agreedOn, async () => {
    const [first, second] = await openMisses(story, contractId);
    const proposal = await story.of(MakegoodProposals).propose({ contractId, commitmentId, missed: [first!, second!], remedy: 'moreReads', isShown: true, note: 'Two more time-outs before the end of the season.' });
    await story.of(MakegoodProposals).accept(proposal.id, proposal.version, { name: 'Dr. Signe Halvorsen', on: agreedOn, note: 'On the telephone' });
  });
  await story.today(async () => {
    const [third] = await openMisses(story, contractId);
    await story.of(MakegoodProposals).propose({ contractId, commitmentId, missed: [third!], remedy: 'credit', isShown: true, answerBy: addDays(calendar.today, 14) });
  });
}

async function openMisses(story: Story, contractId: string): Promise<{ key: string }[]> {
  const lines = await story.of(Shortfalls).ofContract(contractId);
  return lines.flatMap((line) => line.missed.filter((read) => read.isOpen)).map(({ key }) => ({ key }));
}

export async function tellQuestions(story: Story, market: Market, deals: Agreements, games: Games): Promise<void> {
  const { calendar } = story;
  await story.on(calendar.gameDay(-4), async () => {
    const [asked] = await story.of(ReadDisputes).ask(market.sponsors.okafor, {
      commitmentId: deals.okafor.commitmentId, nightId: games['night2']!.nightId, name: 'Chidi Okafor', what: 'I sat in the second row and heard our name begin and stop.',
    });
    await story.of(ReadDisputes).answer(asked!.id, 1, { outcome: 'stands', answer: 'So does our log: play resumed and the read was cut short. It was not counted, and it is still to come.' });
  });
  await story.today(() => story.of(ReadDisputes).ask(market.sponsors.snowmelt, {
    commitmentId: deals.snowmelt.commitmentId, nightId: games['night5']!.nightId, name: 'Elspeth Moor', what: 'Was it read at the half? We were in the line for cocoa and may have missed it.',
  }));
}

/** The page of a sponsor that has something to answer; its token is known to the teller alone. */
export async function giveOutSponsorPage(story: Story, market: Market): Promise<string> {
  const { calendar, zone } = story;
  const { token } = await story.today(() => story.of(LinkService).make('sponsor', market.sponsors.halvorsen, { label: 'Shown by the demo', expiresAt: instantAt(addDays(calendar.seasonEndsOn, 60), '12:00', zone) }));
  return token;
}
