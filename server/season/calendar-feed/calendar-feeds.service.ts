import { Inject, Injectable } from '@nestjs/common';
import { DepartmentService } from '../../access/department.service.ts';
import type { LinkView } from '../../access/link.dto.ts';
import { LinkService } from '../../access/link.service.ts';
import { addDays } from '../../domain/day.ts';
import type { Day } from '../../domain/day.ts';
import { instantAt } from '../../domain/instant.ts';
import { refuse } from '../../domain/refusals.ts';
import { calendarEntries } from '../../domain/season/calendar-feed.ts';
import { CONFIG } from '../../platform/config/config.ts';
import type { Config } from '../../platform/config/config.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { FEED_CALENDARS } from './calendar-feed.dto.ts';
import type { CalendarFeedDto, CalendarFeedView, FeedCalendar, NewCalendarFeedView } from './calendar-feed.dto.ts';
import { FeedGames } from './feed-games.service.ts';
import { icalendarOf } from './icalendar.ts';

const KINDS = { games: 'gamesFeed', nights: 'nightsFeed' } as const;
const RIGHTS = { games: 'subscribe to games', nights: 'subscribe to nights' } as const;

/** A season stays in the feed for a year after its end, and a link opens for a year after the last one. */
const DAYS_AFTER_SEASON = 365;

/** Calendars to subscribe to. Programs keep no cookies, so the secret of a link stands in its address. */
@Injectable()
export class CalendarFeeds {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(LinkService) private readonly links: LinkService,
    @Inject(DepartmentService) private readonly departments: DepartmentService,
    @Inject(FeedGames) private readonly games: FeedGames,
    @Inject(CONFIG) private readonly config: Config,
  ) {}

  /** Every link ever made, the newest first. */
  async list(): Promise<CalendarFeedView[]> {
    const { id } = await this.departments.here();
    const views: CalendarFeedView[] = [];
    for (const calendar of FEED_CALENDARS) views.push(...(await this.links.of(KINDS[calendar], id)).map((link) => viewOf(calendar, link)));
    return views.toSorted((one, other) => (one.id < other.id ? 1 : -1));
  }

  async make({ calendar, label }: CalendarFeedDto): Promise<NewCalendarFeedView> {
    const { id, zone } = await this.departments.here();
    const expiresAt = instantAt(await this.lastDay(), '00:00', zone);
    const { token, ...link } = await this.links.make(KINDS[calendar], id, { label, expiresAt });
    return { ...viewOf(calendar, link), address: `${this.config.publicUrl ?? ''}/api/calendars/${token}/${calendar}.ics` };
  }

  async revoke(id: string): Promise<CalendarFeedView> {
    const found = (await this.list()).find((one) => one.id === id.toLowerCase()) ?? refuse('not-found');
    return viewOf(found.calendar, await this.links.revoke(KINDS[found.calendar], (await this.departments.here()).id, found.id));
  }

  /** What the bearer of a token subscribed to. @throws Refused `not-found`, the same for any token that does not open this calendar */
  async read(calendar: FeedCalendar, token: string, fromAddress: string): Promise<string> {
    const bearer = await this.links.bearer(token, RIGHTS[calendar], fromAddress);
    if (!bearer) return refuse('not-found');
    return this.work.runAs({ departmentId: bearer.departmentId, personId: null }, async () => {
      const { name, zone } = await this.departments.here();
      const tellsNight = calendar === 'nights';
      const { games, ours } = await this.games.since(addDays(await this.departments.today(), -DAYS_AFTER_SEASON), zone, tellsNight);
      const isListed = (game: (typeof games)[number]): boolean => ours.has(game.id) && (!tellsNight || game.sittings[0]!.venueName !== null);
      return icalendarOf(tellsNight ? `${name}: nights and who is needed` : `${name}: games`, calendarEntries(games, zone, isListed));
    });
  }

  private async lastDay(): Promise<Day> {
    const today = await this.departments.today();
    const [row] = await this.work.sql<{ endsOn: Day | null }>('select max(ends_on) as "endsOn" from season where department_id = $1', []);
    const last = row?.endsOn ?? today;
    return addDays(last > today ? last : today, DAYS_AFTER_SEASON + 1);
  }
}

function viewOf(calendar: FeedCalendar, { id, label, madeAt, madeByName, expiresAt, state }: LinkView): CalendarFeedView {
  return { id, calendar, label, madeAt, madeByName, expiresAt, state };
}
