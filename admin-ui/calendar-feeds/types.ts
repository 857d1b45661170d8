export type { CalendarFeedView as CalendarFeed, NewCalendarFeedView as NewCalendarFeed } from '../../server/season/calendar-feed/calendar-feed.dto.ts';
