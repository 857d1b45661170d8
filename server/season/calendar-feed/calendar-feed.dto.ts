import type { LinkState } from '../../domain/access/link-rights.ts';
import { ChoiceField, TextField } from '../../platform/http/fields.ts';

export const FEED_CALENDARS = ['games', 'nights'] as const;
/** `games`: who plays whom, for everybody. `nights`: with who is needed, for those who work them. */
export type FeedCalendar = (typeof FEED_CALENDARS)[number];

export class CalendarFeedDto {
  @ChoiceField(FEED_CALENDARS) calendar: FeedCalendar;
  /** for whom, as the list says it */
  @TextField(1, 120) label: string;
}

export interface CalendarFeedView {
  id: string;
  calendar: FeedCalendar;
  label: string | null;
  madeAt: string | null;
  madeByName: string | null;
  /** a year after the last season ends */
  expiresAt: string;
  state: LinkState;
}

/** The address is shown this once and kept nowhere. */
export interface NewCalendarFeedView extends CalendarFeedView {
  address: string;
}
