import { ChoiceField, CountField, FlagField, RecordField, TextField } from '../platform/http/fields.ts';

export const BANK_SHOT_MENTIONS = ['nextWindow', 'deadBall', 'atOnce'] as const;
export type BankShotMention = (typeof BANK_SHOT_MENTIONS)[number];

/** What a department may decide for itself; the defaults follow the published guidance. */
export interface DepartmentSettings {
  prayerOn: boolean;
  foulCountsRead: boolean;
  bankShotMention: BankShotMention;
  cutShortCounts: boolean;
}

export const DEFAULT_SETTINGS: DepartmentSettings = {
  prayerOn: false,
  foulCountsRead: false,
  bankShotMention: 'nextWindow',
  cutShortCounts: true,
};

export class SettingsDto implements Partial<DepartmentSettings> {
  @FlagField({ optional: true }) prayerOn?: boolean;
  @FlagField({ optional: true }) foulCountsRead?: boolean;
  @ChoiceField(BANK_SHOT_MENTIONS, { optional: true }) bankShotMention?: BankShotMention;
  @FlagField({ optional: true }) cutShortCounts?: boolean;
}

export class ChangeDepartmentDto {
  @TextField(1, 120, { optional: true }) name?: string;
  @TextField(1, 60, { optional: true }) zone?: string;
  @ChoiceField(['en-US', 'en-CA', 'es-US', 'en-GB'], { optional: true }) locale?: string;
  @CountField(1, 12, { optional: true }) fiscalYearStartsInMonth?: number;
  @CountField(1, 12, { optional: true }) schoolYearStartsInMonth?: number;
  @RecordField(() => SettingsDto, { optional: true }) settings?: SettingsDto;
}

export interface DepartmentView {
  id: string;
  name: string;
  zone: string;
  currency: string;
  locale: string;
  fiscalYearStartsInMonth: number;
  schoolYearStartsInMonth: number;
  settings: DepartmentSettings;
  version: number;
}
