import { Inject, Injectable } from '@nestjs/common';
import { DepartmentService } from '../access/department.service.ts';
import { UnitOfWork } from '../platform/database/unit-of-work.ts';
import type { CopyVersionView, CopyView } from './copy.dto.ts';
import { CopyService } from './copy.service.ts';
import type { ApproveByLinkDto, AskForChangeDto, SponsorPageView, WordsOfSponsor } from './sponsor-page.dto.ts';
import { Sponsor } from './sponsor.entity.ts';

/** The page a sponsor reaches by its link. */
@Injectable()
export class SponsorPageService {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(DepartmentService) private readonly departments: DepartmentService,
    @Inject(CopyService) private readonly copies: CopyService,
  ) {}

  async of(sponsorId: string): Promise<SponsorPageView> {
    const sponsor = await this.work.one(Sponsor, sponsorId);
    const department = await this.departments.here();
    const copies = await this.copies.ofSponsor(sponsor.id);
    const { copyCheckBlocks } = department.settings;
    return { departmentName: department.name, sponsorName: sponsor.name, locale: department.locale, copies: copies.map((copy) => sheetOf(copy, copyCheckBlocks)) };
  }

  async approve(sponsorId: string, versionId: string, { name }: ApproveByLinkDto): Promise<SponsorPageView> {
    await this.copies.approveByLink(sponsorId, versionId, name);
    return this.of(sponsorId);
  }

  async askForChange(sponsorId: string, versionId: string, { name, note }: AskForChangeDto): Promise<SponsorPageView> {
    await this.copies.askForChange(sponsorId, versionId, name, note);
    return this.of(sponsorId);
  }
}

/** Old words that were never approved are not asked about any more once newer ones are there. */
function sheetOf(copy: CopyView, blocks: boolean): SponsorPageView['copies'][number] {
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
