import { ChoiceField, CountField } from '../../platform/http/fields.ts';

export const ATTENDANCE_HOW = ['tickets', 'counted', 'estimated'] as const;
export type AttendanceHow = (typeof ATTENDANCE_HOW)[number];

export class AttendanceDto {
  /** people who came; null where nobody knows after all */
  @CountField(0, 200_000, { nullable: true }) attendance: number | null;
  /** from tickets, counted at the door, or estimated; left out with an attendance of null */
  @ChoiceField(ATTENDANCE_HOW, { optional: true, nullable: true }) how?: AttendanceHow | null;
}

/** How many came to a night, and from what that is known; both null while nobody knows. */
export interface NightAttendance {
  attendance: number | null;
  how: AttendanceHow | 'signOff' | null;
}

export interface RecordedAttendance extends NightAttendance {
  at: string;
  byName: string | null;
}

export interface NightAttendanceView extends NightAttendance {
  nightId: string;
  /** what was recorded, the last first, down to what the sign-off says */
  records: RecordedAttendance[];
}
