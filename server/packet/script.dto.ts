import { PartialType } from '@nestjs/swagger';
import type { Day } from '../domain/day.ts';
import type { Instant } from '../domain/instant.ts';
import { ANTHEM_VARIANTS, HONOURS_VARIANTS, MOMENTS } from '../domain/packet/script.ts';
import type { Moment } from '../domain/packet/script.ts';
import type { Segment } from '../domain/packet/segment.ts';
import { PROFILES } from '../domain/season/profiles.ts';
import { ChoiceField, CountField, DayField, FlagField, IdField, OptionalTextField, SecretField, TextField } from '../platform/http/fields.ts';
import { ListQuery, QueryFlag } from '../platform/http/lists.ts';
import { LONGEST_FILLED_IN, LONGEST_SCRIPT } from './liquid.ts';
import type { ScriptNote } from './script-check.ts';
import type { ScriptRow } from './script.entity.ts';

const LANGUAGES = ['en', 'es'] as const;
type Language = (typeof LANGUAGES)[number];
const SPORTS = [...new Set(PROFILES.map((profile) => profile.sport))];

export class ScriptDto {
  @ChoiceField(MOMENTS) moment: Moment;
  @ChoiceField(SPORTS, { optional: true, nullable: true }) sport?: string | null;
  @ChoiceField([...ANTHEM_VARIANTS, ...HONOURS_VARIANTS], { optional: true, nullable: true }) variant?: string | null;
  @ChoiceField(LANGUAGES, { optional: true }) language?: Language;
  @TextField(1, 120) title: string;
  @TextField(1, LONGEST_SCRIPT) text: string;
  @ChoiceField(LANGUAGES, { optional: true, nullable: true }) secondLanguage?: Language | null;
  @OptionalTextField(LONGEST_SCRIPT) secondText?: string | null;
  @FlagField({ optional: true }) isOn?: boolean;
  @CountField(1, 99, { optional: true }) place?: number;
}

export class ChangeScriptDto extends PartialType(ScriptDto) {}

export class ScriptListQuery extends ListQuery {
  @ChoiceField(MOMENTS, { optional: true }) moment?: Moment;
  @ChoiceField(LANGUAGES, { optional: true }) language?: Language;
  @QueryFlag() isOn?: boolean;
}

export class ApproveScriptDto {
  @TextField(1, 120) approvedByName: string;
  @DayField() approvedOn: Day;
  /** the wording that was read; another one by now is not approved */
  @CountField(1, 100_000) wordsNumber: number;
}

export class BringBackDto {
  @CountField(1, 100_000) number: number;
}

export class PreviewDto {
  @SecretField(0, LONGEST_FILLED_IN) text: string;
  @SecretField(0, LONGEST_FILLED_IN, { optional: true, nullable: true }) secondText?: string | null;
  @ChoiceField(LANGUAGES, { optional: true }) language?: Language;
  @ChoiceField(LANGUAGES, { optional: true, nullable: true }) secondLanguage?: Language | null;
  @ChoiceField(MOMENTS, { optional: true, nullable: true }) moment?: Moment | null;
  /** filled in for this night; without one, by the examples of the variables */
  @IdField({ optional: true, nullable: true }) nightId?: string | null;
}

export interface ScriptView {
  id: string;
  moment: Moment;
  sport: string | null;
  language: Language;
  title: string;
  text: string;
  /** which form of the moment this is, as one of the moment's variants */
  variant: string | null;
  secondLanguage: Language | null;
  secondText: string | null;
  /** counts the changes of its words */
  wordsNumber: number;
  approvedOn: Day | null;
  approvedByName: string | null;
  isOn: boolean;
  place: number;
  /** as it came; nobody changed it yet */
  isDefault: boolean;
  /** the words are the district's own and are never changed here */
  isLocked: boolean;
  /** the script it was when the department began, where it was one */
  cameAs: string | null;
  version: number;
}

export interface ScriptVersionView {
  number: number;
  title: string;
  language: Language;
  text: string;
  secondLanguage: Language | null;
  secondText: string | null;
  /** null for the words every department starts with */
  recordedAt: Instant | null;
  recordedByName: string | null;
}

export interface PreviewedText {
  segments: readonly Segment[];
  seconds: number;
  problems: readonly ScriptNote[];
  notes: readonly ScriptNote[];
}

export interface PreviewView {
  wordsPerMinute: number;
  first: PreviewedText;
  second: PreviewedText | null;
  /** both languages, one after the other */
  seconds: number;
}

export function scriptView(row: ScriptRow, more: Pick<ScriptView, 'isDefault' | 'isLocked' | 'cameAs'>): ScriptView {
  const { departmentId: _, ...view } = row;
  return { ...view, ...more };
}
