import { Inject, Injectable } from '@nestjs/common';
import { DepartmentService } from '../../access/department.service.ts';
import type { Day } from '../../domain/day.ts';
import { refuse } from '../../domain/refusals.ts';
import { afterContact } from '../../domain/sponsorship/contact.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import type { Listed } from '../../platform/http/lists.ts';
import { Sponsor } from '../sponsor.entity.ts';
import type { LoseSponsorDto, SponsorContactDto, SponsorContactView } from './sponsor-contact.dto.ts';
import { SponsorContact } from './sponsor-contact.entity.ts';

const CONTACTS = `select contact.id, contact.sponsor_id as "sponsorId", contact.contacted_on as "contactedOn", contact.how, contact.with_whom as "withWhom",
    contact.what, contact.next_step as "nextStep", contact.next_step_on as "nextStepOn", person.name as "contactedByName", contact.recorded_at as "recordedAt"
  from sponsor_contact as contact left join person on person.id = contact.contacted_by_person_id
  where contact.department_id = $1 and contact.sponsor_id = $2 order by contact.contacted_on desc, contact.recorded_at desc, contact.id desc`;

/** What was said to a sponsor, and whether it is lost. */
@Injectable()
export class SponsorContacts {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(DepartmentService) private readonly departments: DepartmentService,
  ) {}

  async of(sponsorId: string): Promise<Listed<SponsorContactView>> {
    await this.work.one(Sponsor, sponsorId);
    const data = await this.work.sql<SponsorContactView>(CONTACTS, [sponsorId]);
    return { data, total: data.length };
  }

  /** @throws Refused as the rule `afterContact` does */
  async add(sponsorId: string, form: SponsorContactDto): Promise<SponsorContactView> {
    const sponsor = await this.locked(sponsorId);
    const { lastContactOn, nextStep, nextStepOn } = sponsor;
    const contact = { contactedOn: form.contactedOn, nextStep: form.nextStep ?? null, nextStepOn: form.nextStepOn ?? null };
    const after = afterContact({ lastContactOn: lastContactOn as Day | null, nextStep, nextStepOn: nextStepOn as Day | null }, contact, await this.departments.today());
    const [row] = await this.work.insert(SponsorContact, { ...contact, sponsorId, how: form.how, withWhom: form.withWhom ?? null, what: form.what, contactedByPersonId: this.work.scope.personId });
    await this.work.update(Sponsor, sponsorId, null, after);
    return (await this.of(sponsorId)).data.find((one) => one.id === row!.id)!;
  }

  /** There is no next step any more; one that is agreed later starts anew. */
  async lose(sponsorId: string, { lostOn, reason }: LoseSponsorDto): Promise<void> {
    const sponsor = await this.locked(sponsorId);
    if (sponsor.lostOn !== null) refuse('sponsor-lost-already');
    if (lostOn > (await this.departments.today())) refuse('contact-after-today');
    await this.work.update(Sponsor, sponsorId, null, { lostOn, lostReason: reason, nextStep: null, nextStepOn: null });
  }

  async winBack(sponsorId: string): Promise<void> {
    const sponsor = await this.locked(sponsorId);
    if (sponsor.lostOn === null) refuse('sponsor-not-lost');
    await this.work.update(Sponsor, sponsorId, null, { lostOn: null, lostReason: null });
  }

  private async locked(sponsorId: string): Promise<Sponsor> {
    await this.work.one(Sponsor, sponsorId);
    await this.work.lock(Sponsor, [sponsorId]);
    return this.work.one(Sponsor, sponsorId);
  }
}
