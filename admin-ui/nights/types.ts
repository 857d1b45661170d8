export type { NightAttendanceView as NightAttendance } from '../../server/night/attendance/night-attendance.dto.ts';
export type { NightTidyView as NightTidy } from '../../server/night/closing/closing.dto.ts';
export type { LogEntryView, NightLogView as NightLog } from '../../server/night/log/log.dto.ts';
export type { IssueView as Issue, NextIssueView as NextIssue } from '../../server/packet/packet.dto.ts';
export type { NightLockView as NightLock } from '../../server/planning/locks/night-lock.dto.ts';
export type { PlacementView as Placement } from '../../server/planning/placement.dto.ts';
export type { GameOfNightView as NightGame, NightView as Night, PersonOfNightView as PersonOfNight } from '../../server/season/night.dto.ts';
