import type { Day } from '../domain/day.ts';
import { clockAt } from '../domain/instant.ts';
import type { Instant } from '../domain/instant.ts';
import type { PacketWindow } from '../domain/packet/night-for-packet.ts';
import type { Level } from '../domain/season/game.ts';
import { spokenClock } from '../domain/season/night.ts';
import { kindOfWindow } from '../domain/season/window-names.ts';

const LEVELS: Readonly<Record<Level, string>> = {
  varsity: 'varsity',
  juniorVarsity: 'junior varsity',
  sophomore: 'sophomore',
  freshman: 'freshman',
  middleSchool: 'middle school',
};

export const levelWords = (level: Level): string => LEVELS[level];

/** "Friday, December 4, 2026"; without the year, "Tuesday, December 8". */
export function dayWords(day: Day, locale: string, withYear = true): string {
  const [year, month, date] = day.split('-').map(Number) as [number, number, number];
  const format = new Intl.DateTimeFormat(locale, {
    weekday: 'long', month: 'long', day: 'numeric', ...(withYear ? { year: 'numeric' as const } : {}), timeZone: 'UTC',
  });
  return format.format(Date.UTC(year, month - 1, date));
}

export const clockWords = (moment: Instant, zone: string): string => spokenClock(clockAt(moment, zone));

/** "bankShot" and "Bank shot" are both "bank shot" on paper. */
export function happeningWords(name: string): string {
  return name.replace(/([a-z])([A-Z])/g, '$1 $2').replace(/[_-]+/g, ' ').toLowerCase().trim();
}

/** Packets name the windows of a game by their kind; the time-outs go by "next in line". */
export function packetWindow(key: string): PacketWindow {
  const kind = kindOfWindow(key);
  return kind === 'timeOut' ? 'timeout' : (kind as PacketWindow);
}
