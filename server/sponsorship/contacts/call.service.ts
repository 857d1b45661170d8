import { Inject, Injectable } from '@nestjs/common';
import { DepartmentService } from '../../access/department.service.ts';
import type { Day } from '../../domain/day.ts';
import { callList, weekOf } from '../../domain/sponsorship/call-list.ts';
import type { CallReason } from '../../domain/sponsorship/call-list.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import type { CallsQuery, CallsView, CallView } from './call.dto.ts';

interface SponsorRow extends Omit<CallView, 'group' | 'on' | 'reasons'> {
  lastContactOn: Day | null;
  nextStep: string | null;
  nextStepOn: Day | null;
}

const SPONSORS = `select sponsor.id as "sponsorId", sponsor.name as "sponsorName", sponsor.say_as as "sayAs", category.name as "categoryName",
    sponsor.contact_name as "contactName", sponsor.phone, sponsor.email, sponsor.caller_person_id as "callerPersonId", person.name as "callerName",
    sponsor.lost_on as "lostOn", sponsor.last_contact_on as "lastContactOn", sponsor.next_step as "nextStep", sponsor.next_step_on as "nextStepOn",
    (select jsonb_build_object('contactedOn', contact.contacted_on, 'how', contact.how, 'withWhom', contact.with_whom, 'what', contact.what)
      from sponsor_contact as contact where contact.department_id = $1 and contact.sponsor_id = sponsor.id
      order by contact.contacted_on desc, contact.recorded_at desc, contact.id desc limit 1) as "lastContact"
  from sponsor join sponsor_category as category on category.department_id = $1 and category.id = sponsor.category_id
    left join person on person.id = sponsor.caller_person_id
  where sponsor.department_id = $1 order by sponsor.name collate "und-x-icu", sponsor.id`;

type Found<Kind> = Extract<CallReason, { kind: Kind }> & { sponsorId: string };

const OFFERS = `select 'offerLapses' as kind, offer.sponsor_id as "sponsorId", offer.id as "offerId", offer.title, offer.number, offer.lapses_on as on
  from offer where offer.department_id = $1 and offer.state = 'open' and offer.lapses_on >= $2 order by offer.lapses_on, offer.id`;

/** A contract of a season that is on, behind which nothing is drawn up or offered. */
const ENDING = `select 'contractEnds' as kind, contract.sponsor_id as "sponsorId", contract.id as "contractId", contract.title, contract.number, term.ends_on as on
  from term join contract on contract.department_id = $1 and contract.id = term.contract_id
    join season on season.department_id = $1 and season.id = term.season_id
    join sponsor on sponsor.department_id = $1 and sponsor.id = contract.sponsor_id
  where term.department_id = $1 and term.state = 'signed' and season.starts_on <= $2 and season.ends_on >= $2 and term.ends_on >= $2 and sponsor.lost_on is null
    and not exists (select from term as later join contract as other on other.department_id = $1 and other.id = later.contract_id
      where later.department_id = $1 and other.sponsor_id = contract.sponsor_id and later.ends_on > term.ends_on)
    and not exists (select from offer where offer.department_id = $1 and offer.sponsor_id = contract.sponsor_id and offer.state in ('draft', 'open') and offer.ends_on > term.ends_on)
  order by term.ends_on, contract.id`;

/** "Whom do I call this week?" */
@Injectable()
export class CallService {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(DepartmentService) private readonly departments: DepartmentService,
  ) {}

  async ofWeek({ weekOf: day, callerPersonId, isNobodys }: CallsQuery): Promise<CallsView> {
    const today = await this.departments.today();
    const week = weekOf(day ?? today);
    const sponsors = await this.work.sql<SponsorRow>(SPONSORS);
    const found = [...(await this.work.sql<Found<'offerLapses'>>(OFFERS, [today])), ...(await this.work.sql<Found<'contractEnds'>>(ENDING, [today]))];
    const facts = sponsors
      .filter((sponsor) => (isNobodys ? sponsor.callerPersonId === null : callerPersonId === undefined || sponsor.callerPersonId === callerPersonId))
      .map((sponsor) => ({ ...sponsor, reasons: [...stepOf(sponsor), ...found.filter((one) => one.sponsorId === sponsor.sponsorId).map(({ sponsorId: _sponsorId, ...reason }) => reason as CallReason)] }));
    const of = new Map(facts.map((fact) => [fact.sponsorId, fact]));
    return {
      from: week.from,
      through: week.through,
      today,
      calls: callList(facts, week, today).map(({ sponsorId, ...call }) => {
        const { lastContactOn: _last, nextStep: _step, nextStepOn: _on, reasons: _reasons, ...sponsor } = of.get(sponsorId)!;
        return { ...sponsor, ...call };
      }),
      callers: callersOf(sponsors),
    };
  }
}

function stepOf({ nextStep, nextStepOn }: SponsorRow): CallReason[] {
  return nextStep === null && nextStepOn === null ? [] : [{ kind: 'nextStep', on: nextStepOn, text: nextStep }];
}

function callersOf(sponsors: readonly SponsorRow[]): CallsView['callers'] {
  const names = new Map(sponsors.flatMap(({ callerPersonId, callerName }) => (callerPersonId && callerName ? [[callerPersonId, callerName] as const] : [])));
  return [...names].map(([personId, name]) => ({ personId, name })).toSorted((one, other) => one.name.localeCompare(other.name));
}
