import type { CopyVerdict, MarkKind } from '../domain/sponsorship/copy-mark.ts';
import type { CopyMark, MessageCheck } from '../domain/sponsorship/copy-check.ts';
import { ChoiceField, DayField, FlagField, IdField, OptionalTextField, TextField } from '../platform/http/fields.ts';
import { ListQuery } from '../platform/http/lists.ts';
import type { Language } from './copy-version.entity.ts';

const OPEN = { optional: true, nullable: true };
const LANGUAGES = ['en', 'es'];

export class CopyTextDto {
  @TextField(1, 2000) text: string;
  @ChoiceField(LANGUAGES, { optional: true }) language?: Language;
  @OptionalTextField(2000) secondText?: string | null;
  @ChoiceField(LANGUAGES, OPEN) secondLanguage?: Language | null;
}

export class CopyVersionDto extends CopyTextDto {
  @DayField(OPEN) startsOn?: string | null;
  @DayField(OPEN) endsOn?: string | null;
}

export class CopyDto extends CopyVersionDto {
  @IdField() sponsorId: string;
  @IdField() readKindId: string;
  @TextField(1, 120) title: string;
  @TextField(1, 500) fallbackText: string;
  @FlagField({ optional: true }) rotates?: boolean;
}

export class ChangeCopyDto {
  @TextField(1, 120, { optional: true }) title?: string;
  @TextField(1, 500, { optional: true }) fallbackText?: string;
  @FlagField({ optional: true }) rotates?: boolean;
}

export class CheckCopyDto extends CopyTextDto {
  @IdField() sponsorId: string;
}

export class ApproveCopyDto {
  @TextField(1, 120) approvedByName: string;
  @DayField() approvedOn: string;
  @OptionalTextField(500) note?: string | null;
  /** why marked words are approved all the same, where the department approves none */
  @OptionalTextField(300) overrideReason?: string | null;
}

export class StopCopyDto {
  @TextField(1, 120) stoppedByName: string;
  @TextField(1, 300) reason: string;
}

export class CopyListQuery extends ListQuery {
  @IdField({ optional: true }) sponsorId?: string;
  @IdField({ optional: true }) readKindId?: string;
  @ChoiceField(['approved', 'waiting', 'stopped'], { optional: true }) state?: string;
}

/** What the copy check says of a message; the marks stand as UTF-16 places in their text. */
export interface CopyCheckView {
  verdict: CopyVerdict;
  verdictTitle: string;
  paragraph: string;
  texts: {
    language: Language;
    marks: (CopyMark & { title: string; paragraph: string; sentence: string })[];
    slogans: { start: number; end: number; slogan: string }[];
  }[];
  caution: string;
}

export interface CopyVersionView {
  id: string;
  number: number;
  language: Language;
  text: string;
  secondLanguage: Language | null;
  secondText: string | null;
  startsOn: string | null;
  endsOn: string | null;
  approvedOn: string | null;
  approvedByName: string | null;
  approvedHow: 'link' | 'recordedByDirector' | null;
  approvalNote: string | null;
  changeAskedAt: string | null;
  changeAskedByName: string | null;
  changeNote: string | null;
  check: MessageCheck;
}

export interface CopyView {
  id: string;
  sponsorId: string;
  sponsorName: string;
  readKindId: string;
  readKindName: string;
  title: string;
  fallbackText: string;
  rotates: boolean;
  stoppedAt: string | null;
  stoppedBecause: string | null;
  stoppedByName: string | null;
  state: 'approved' | 'waiting' | 'stopped';
  /** kinds of words the copy check marks in the newest version */
  marked: MarkKind[];
  /** what it marks in the neutral line, which should be none */
  fallbackMarks: CopyMark[];
  /** newest first */
  versions: CopyVersionView[];
  version: number;
}
