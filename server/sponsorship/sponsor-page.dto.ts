import { TextField } from '../platform/http/fields.ts';
import type { Language } from './copy-version.entity.ts';

export class ApproveByLinkDto {
  @TextField(1, 120) name: string;
}

export class AskForChangeDto extends ApproveByLinkDto {
  @TextField(1, 1000) note: string;
}

/** The words of one version as the crowd will hear them; directions to the announcer are left out. */
export interface WordsOfSponsor {
  id: string;
  number: number;
  texts: { language: Language; text: string }[];
  startsOn: string | null;
  endsOn: string | null;
  approvedOn: string | null;
  approvedByName: string | null;
  changeAskedAt: string | null;
  changeAskedByName: string | null;
  changeNote: string | null;
  /** the school approves no words that its copy check marks, so it will send others */
  isHeldBack: boolean;
}

/** What one sponsor sees by its link: its own words and nobody else's. */
export interface SponsorPageView {
  departmentName: string;
  sponsorName: string;
  locale: string;
  copies: { id: string; title: string; readKindName: string; isStopped: boolean; waiting: WordsOfSponsor[]; approved: WordsOfSponsor[] }[];
}
