import { Inject, Injectable } from '@nestjs/common';
import { DepartmentService } from '../../access/department.service.ts';
import type { DepartmentSettings } from '../../access/department.dto.ts';
import type { LinkVisitor } from '../../access/visitor.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import type { CopyVersionView, CopyView } from '../../sponsorship/copy.dto.ts';
import { CopyService } from '../../sponsorship/copy.service.ts';
import { Sponsor } from '../../sponsorship/sponsor.entity.ts';
import { ContactsOfSchool } from './contacts-of-school.service.ts';
import { ContractsOfSponsor } from './contracts-of-sponsor.service.ts';
import { OffersToSponsor } from './offers-to-sponsor.service.ts';
import type { CopyOfSponsor, SponsorPageView, WordsOfSponsor } from './sponsor-page.dto.ts';

/** The page a sponsor reaches by its link; all but its nights, its dollars and its questions, which are asked for by themselves. */
@Injectable()
export class SponsorPageService {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(DepartmentService) private readonly departments: DepartmentService,
    @Inject(CopyService) private readonly copies: CopyService,
    @Inject(ContractsOfSponsor) private readonly contracts: ContractsOfSponsor,
    @Inject(ContactsOfSchool) private readonly contacts: ContactsOfSchool,
    @Inject(OffersToSponsor) private readonly offers: OffersToSponsor,
  ) {}

  async of({ subjectId: sponsorId, endsAt }: LinkVisitor): Promise<SponsorPageView> {
    const sponsor = await this.work.one(Sponsor, sponsorId);
    const { name, locale, zone, currency, settings } = await this.departments.here();
    return {
      departmentName: name,
      sponsorName: sponsor.name,
      locale, zone, currency,
      today: await this.departments.today(),
      linkEndsAt: endsAt,
      contacts: await this.contacts.of(sponsor.id),
      contracts: await this.contracts.of(sponsor.id),
      offers: await this.offers.of(sponsor.id),
      copies: await this.copiesOf(sponsor.id, settings),
    };
  }

  private async copiesOf(sponsorId: string, { copyCheckBlocks }: DepartmentSettings): Promise<CopyOfSponsor[]> {
    return (await this.copies.ofSponsor(sponsorId)).map((copy) => sheetOf(copy, copyCheckBlocks));
  }
}

/** Old words that were never approved are not asked about any more once newer ones are there. */
function sheetOf(copy: CopyView, blocks: boolean): CopyOfSponsor {
  const newest = copy.versions[0];
  const waiting = newest && newest.approvedOn === null && copy.stoppedAt === null ? [wordsOf(newest, blocks)] : [];
  const approved = copy.versions.filter((version) => version.approvedOn !== null).map((version) => wordsOf(version, false));
  return { id: copy.id, title: copy.title, readKindName: copy.readKindName, isStopped: copy.stoppedAt !== null, waiting, approved };
}

function wordsOf(version: CopyVersionView, blocks: boolean): WordsOfSponsor {
  const { id, number, startsOn, endsOn, approvedOn, approvedByName, changeAskedAt, changeAskedByName, changeNote } = version;
  const texts = [
    { language: version.language, text: asRead(version.text) },
    ...(version.secondText !== null && version.secondLanguage !== null ? [{ language: version.secondLanguage, text: asRead(version.secondText) }] : []),
  ];
  const isHeldBack = blocks && version.check.verdict !== 'acknowledgment';
  return { id, number, texts, startsOn, endsOn, approvedOn, approvedByName, changeAskedAt, changeAskedByName, changeNote, isHeldBack };
}

/** Directions such as `[[pause 3]]` are for the announcer. */
function asRead(text: string): string {
  return text.replace(/[^\S\n]*\[\[[^\]]*\]\]/gu, '').trim();
}
