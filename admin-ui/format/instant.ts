import { department } from '../session/me.ts';

function written(at: string, options: Intl.DateTimeFormatOptions): string {
  const { locale, zone } = department();
  return new Intl.DateTimeFormat(locale, { ...options, timeZone: zone }).format(Date.parse(at));
}

/** The hour in the department's zone: "7:00 PM". */
export const clockText = (at: string | null | undefined): string => (at ? written(at, { hour: 'numeric', minute: '2-digit' }) : '–');

/** Day and hour in the department's zone. */
export const instantText = (at: string | null | undefined): string =>
  at ? written(at, { weekday: 'short', day: 'numeric', month: 'short', year: 'numeric', hour: 'numeric', minute: '2-digit' }) : '–';

/** The hour as a clock field wants it: "19:00". */
export function clockTyped(at: string | null | undefined): string {
  if (!at) return '';
  return new Intl.DateTimeFormat('en-GB', { timeZone: department().zone, hour: '2-digit', minute: '2-digit', hourCycle: 'h23' }).format(Date.parse(at));
}

/** The moment a clock in the department's zone shows this hour on this day, as an ISO instant. */
export function instantOn(day: string, clock: string): string {
  const wanted = Date.parse(`${day}T${clock}:00Z`);
  const shown = (at: number): number => {
    const parts = new Intl.DateTimeFormat('sv-SE', { timeZone: department().zone, dateStyle: 'short', timeStyle: 'medium' }).format(at);
    return Date.parse(`${parts.replace(' ', 'T')}Z`);
  };
  const first = wanted - (shown(wanted) - wanted);
  return new Date(first - (shown(first) - wanted)).toISOString();
}
