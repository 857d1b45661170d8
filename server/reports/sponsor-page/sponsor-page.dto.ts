import type { Day } from '../../domain/day.ts';
import type { Language } from '../../sponsorship/copy-version.entity.ts';
import { TextField } from '../../platform/http/fields.ts';
import type { ContractOfSponsor } from './contracts-of-sponsor.dto.ts';

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

export interface CopyOfSponsor {
  id: string;
  title: string;
  readKindName: string;
  isStopped: boolean;
  waiting: WordsOfSponsor[];
  approved: WordsOfSponsor[];
}

/** Whom a sponsor calls: who signs and banks, and whoever stands for it. */
export interface ContactOfSchool {
  name: string;
  contactName: string | null;
  phone: string | null;
  email: string | null;
}

/** What was put to the sponsor and is open; it is answered by talking to the school. */
export interface OfferToSponsor {
  id: string;
  number: string | null;
  title: string;
  priceCents: number;
  lapsesOn: Day;
  lines: string[];
}

/** What one sponsor sees by its link: its own and nobody else's. */
export interface SponsorPageView {
  departmentName: string;
  sponsorName: string;
  locale: string;
  zone: string;
  currency: string;
  today: Day;
  /** the last moment of the link */
  linkEndsAt: string;
  contacts: ContactOfSchool[];
  contracts: ContractOfSponsor[];
  offers: OfferToSponsor[];
  copies: CopyOfSponsor[];
}
