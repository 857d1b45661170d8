import { MoveService } from '../server/planning/move.service.ts';
import { SpreadService } from '../server/planning/spread.service.ts';
import { ContractHappenings } from '../server/sponsorship/contract-happenings.service.ts';
import { tellAccountsOffice } from './accounts-office.ts';
import { tellContracts } from './contracts.ts';
import { tellCopy } from './copy.ts';
import { Desk, tellFirstInvoices, tellLaterInvoices } from './money.ts';
import { signOffNight, tellAway, tellNight } from './nights.ts';
import type { NightKey } from './nights.ts';
import { issuePacket, tellPeople } from './people-of-nights.ts';
import { tellPlan } from './plan.ts';
import { giveOutSponsorPage, issueStatement, tellAttendance, tellMakegoods, tellQuestions } from './proof.ts';
import { tellSchedule } from './schedule.ts';
import { tellScripts } from './scripts.ts';
import { tellSelling } from './selling.ts';
import { tellSchools } from './schools.ts';
import { tellMarket } from './sponsors.ts';
import type { Story } from './story.ts';

/** What the teller gives out at the end: the way to one sponsor's page. */
export interface Told {
  sponsorName: string;
  sponsorPage: string;
}

/** The season in the order in which it happened. */
export async function tellSeason(story: Story): Promise<Told> {
  const { calendar } = story;
  const places = await tellSchools(story);
  const games = await tellSchedule(story, places);
  const market = await tellMarket(story, places.seasonId);
  const deals = await tellContracts(story, places, market);
  await tellCopy(story, market);
  const spread = (on = calendar.today) => story.outside(on, () => story.of(SpreadService).spread(places.seasonId));
  const night = async (key: NightKey, extra = {}) => {
    await issuePacket(story, games[key]!);
    await tellNight(story, places, games, { key, mentions: deals.copperline, ...extra });
  };
  const desk = new Desk(story, market);

  await tellPeople(story, games);
  await tellScripts(story, games);
  await spread(calendar.seasonStartsOn);
  await tellFirstInvoices(story, desk, deals);
  await tellAway(story, places, games);
  await night('night1');
  await signOffNight(story, games, 'night1', { attendance: 212 });
  await night('night2');
  await signOffNight(story, games, 'night2');
  const snowed = games['snowed']!;
  await story.on(snowed.day, () => story.of(MoveService).cancel(snowed.gameId, { reason: 'Snow: the pass was closed and the visitors could not travel.', on: snowed.day }));
  await spread(calendar.after(-8, 1));
  await night('night3');
  await signOffNight(story, games, 'night3', { attendance: 236 });
  await night('night4');
  await signOffNight(story, games, 'night4', { note: 'The microphone failed in the second quarter.' });
  for (const deal of [deals.juniper, deals.snowmelt]) await issueStatement(story, deal, calendar.after(-5, 1));
  await night('night5', { extra: deals.mirabel });
  await signOffNight(story, games, 'night5', { attendance: 268 });
  const invoices = await tellLaterInvoices(story, desk, deals);
  const boiler = games['boiler']!;
  const reason = 'The boiler of the fieldhouse was out.';
  await story.on(boiler.day, () => story.of(MoveService).postpone(boiler.gameId, { reason, to: calendar.gameDay(boiler.line.movedTo!), clock: '19:00' }));
  const day = calendar.gameDay(-3);
  await story.on(day, () => story.of(ContractHappenings).deliver(deals.pinyon.contractId, deals.pinyon.benefitId, { deliveredOn: day, quantity: 1, proof: 'Program of the Otters night, page 3' }));
  await story.on(calendar.gameDay(-1), () => story.of(ContractHappenings).earnThrough(deals.halvorsen.contractId, deals.halvorsen.benefitId, calendar.gameDay(-1)));
  await tellAccountsOffice(story, market, deals, invoices);
  await tellAttendance(story, games);
  await tellMakegoods(story, deals);
  await tellQuestions(story, market, deals, games);
  await issueStatement(story, deals.snowmelt, calendar.before(-1, 1));
  await night('last');
  await tellSelling(story, places, market, games);
  await tellPlan(story, places.seasonId, 'Offers of the last weeks and a game with a new day');
  await issuePacket(story, games['next']!);
  return { sponsorName: 'Halvorsen Orthodontics', sponsorPage: await giveOutSponsorPage(story, market) };
}
