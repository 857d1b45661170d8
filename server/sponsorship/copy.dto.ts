import { ChoiceField, DayField, IdField, OptionalTextField, TextField } from '../platform/http/fields.ts';
import { ListQuery } from '../platform/http/lists.ts';
import type { Language } from './copy-version.entity.ts';

const OPEN = { optional: true, nullable: true };
const LANGUAGES = ['en', 'es'];

export class CopyVersionDto {
  @TextField(1, 2000) text: string;
  @ChoiceField(LANGUAGES, { optional: true }) language?: Language;
  @DayField(OPEN) startsOn?: string | null;
  @DayField(OPEN) endsOn?: string | null;
}

export class CopyDto extends CopyVersionDto {
  @IdField() sponsorId: string;
  @IdField() readKindId: string;
  @TextField(1, 120) title: string;
  @TextField(1, 500) fallbackText: string;
}

export class ChangeCopyDto {
  @TextField(1, 120, { optional: true }) title?: string;
  @TextField(1, 500, { optional: true }) fallbackText?: string;
}

export class ApproveCopyDto {
  @TextField(1, 120) approvedByName: string;
  @DayField() approvedOn: string;
  @OptionalTextField(500) note?: string | null;
}

export class CopyListQuery extends ListQuery {
  @IdField({ optional: true }) sponsorId?: string;
  @IdField({ optional: true }) readKindId?: string;
  @ChoiceField(['approved', 'waiting', 'stopped'], { optional: true }) state?: string;
}

export interface CopyVersionView {
  id: string;
  number: number;
  language: Language;
  text: string;
  startsOn: string | null;
  endsOn: string | null;
  approvedOn: string | null;
  approvedByName: string | null;
  approvedHow: 'link' | 'recordedByDirector' | null;
  approvalNote: string | null;
}

export interface CopyView {
  id: string;
  sponsorId: string;
  sponsorName: string;
  readKindId: string;
  readKindName: string;
  title: string;
  fallbackText: string;
  stoppedAt: string | null;
  state: 'approved' | 'waiting' | 'stopped';
  /** newest first */
  versions: CopyVersionView[];
  version: number;
}
