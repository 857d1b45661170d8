import { CentsField, ChoiceField, ClockField, CountField, CountsField, FlagField, RecordField, TextField } from '../platform/http/fields.ts';

export const BANK_SHOT_MENTIONS = ['nextWindow', 'deadBall', 'atOnce'] as const;
export type BankShotMention = (typeof BANK_SHOT_MENTIONS)[number];

/** What a department may decide for itself; the defaults follow the published guidance. */
export interface DepartmentSettings {
  prayerOn: boolean;
  foulCountsRead: boolean;
  bankShotMention: BankShotMention;
  cutShortCounts: boolean;
  /** for the announcer who has not measured their own rate */
  wordsPerMinute: number;
  paper: 'letter' | 'a4';
  /** sponsor copy with a mark of the copy check is refused, not only marked */
  copyCheckBlocks: boolean;
  officialsIntroduced: boolean;
  anthemForm: 'sung' | 'played';
  flagForm: 'colourGuard' | 'inPlace';
  /** null for what the sport's profile says */
  timeOutsReliedOn: number | null;
  /** `HH:MM`: the end of the official school day */
  schoolDayEndsAt: string;
  /** two letters, or null where only the country's rules matter */
  state: string | null;
  /** whether who took a receipt may also deposit it or apply it to invoices */
  takerMayPost: boolean;
  /** what a payer is charged when a check comes back; 0 for nothing */
  returnedCheckFeeCents: number;
  /** days after the due day on which a reminder goes out, each once */
  reminderDays: readonly number[];
  /** by which day receivables are aged */
  agingBy: 'dueDay' | 'invoiceAge';
}

export const DEFAULT_SETTINGS: DepartmentSettings = {
  prayerOn: false,
  foulCountsRead: false,
  bankShotMention: 'nextWindow',
  cutShortCounts: true,
  wordsPerMinute: 140,
  paper: 'letter',
  copyCheckBlocks: false,
  officialsIntroduced: false,
  anthemForm: 'played',
  flagForm: 'inPlace',
  timeOutsReliedOn: null,
  schoolDayEndsAt: '15:00',
  state: null,
  takerMayPost: false,
  returnedCheckFeeCents: 0,
  reminderDays: [7, 30, 60],
  agingBy: 'dueDay',
};

/** The states and the District of Columbia by their two letters. @source USPS Publication 28, appendix B (from memory) */
export const STATES = (
  'AL AK AZ AR CA CO CT DE DC FL GA HI ID IL IN IA KS KY LA ME MD MA MI MN MS MO MT NE NV NH NJ NM NY NC ND OH OK OR PA RI SC SD TN TX UT VT VA WA WV WI WY'
).split(' ');

export class SettingsDto implements Partial<DepartmentSettings> {
  @FlagField({ optional: true }) prayerOn?: boolean;
  @FlagField({ optional: true }) foulCountsRead?: boolean;
  @ChoiceField(BANK_SHOT_MENTIONS, { optional: true }) bankShotMention?: BankShotMention;
  @FlagField({ optional: true }) cutShortCounts?: boolean;
  @CountField(60, 240, { optional: true }) wordsPerMinute?: number;
  @ChoiceField(['letter', 'a4'], { optional: true }) paper?: 'letter' | 'a4';
  @FlagField({ optional: true }) copyCheckBlocks?: boolean;
  @FlagField({ optional: true }) officialsIntroduced?: boolean;
  @ChoiceField(['sung', 'played'], { optional: true }) anthemForm?: 'sung' | 'played';
  @ChoiceField(['colourGuard', 'inPlace'], { optional: true }) flagForm?: 'colourGuard' | 'inPlace';
  @CountField(0, 20, { optional: true, nullable: true }) timeOutsReliedOn?: number | null;
  @ClockField({ optional: true }) schoolDayEndsAt?: string;
  @ChoiceField(STATES, { optional: true, nullable: true }) state?: string | null;
  @FlagField({ optional: true }) takerMayPost?: boolean;
  @CentsField({ most: 100_000 }, { optional: true }) returnedCheckFeeCents?: number;
  @CountsField(1, 365, { most: 6 }, { optional: true }) reminderDays?: number[];
  @ChoiceField(['dueDay', 'invoiceAge'], { optional: true }) agingBy?: 'dueDay' | 'invoiceAge';
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
