import ical, { ICalEventStatus, ICalEventTransparency } from 'ical-generator';
import type { CalendarEntry, CalendarStatus } from '../../domain/season/calendar-feed.ts';

const STATUS: Readonly<Record<CalendarStatus, ICalEventStatus>> = {
  CONFIRMED: ICalEventStatus.CONFIRMED, TENTATIVE: ICalEventStatus.TENTATIVE, CANCELLED: ICalEventStatus.CANCELLED,
};

/** How often a calendar program is asked to look again. */
const REFRESH_SECONDS = 3600;

/** The entries as iCalendar (RFC 5545). Nothing in it comes from the clock: the same entries are the same bytes. */
export function icalendarOf(name: string, entries: readonly CalendarEntry[]): string {
  const calendar = ical({ name, prodId: '//Rafterline//Calendar feed//EN', ttl: REFRESH_SECONDS });
  for (const { uid, sequence, changedAt, status, when, summary, description, location } of entries) {
    const isAllDay = 'day' in when;
    calendar.createEvent({
      id: uid,
      sequence,
      stamp: new Date(changedAt),
      lastModified: new Date(changedAt),
      start: new Date(isAllDay ? `${when.day}T00:00:00.000Z` : when.startsAt),
      end: new Date(isAllDay ? `${when.untilDay}T00:00:00.000Z` : when.endsAt),
      allDay: isAllDay,
      summary,
      description,
      location,
      status: STATUS[status],
      transparency: isAllDay || status === 'CANCELLED' ? ICalEventTransparency.TRANSPARENT : ICalEventTransparency.OPAQUE,
    });
  }
  return `${calendar.toString()}\r\n`;
}
