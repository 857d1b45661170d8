import { Inject, Injectable } from '@nestjs/common';
import type { Role } from '../domain/access/rights.ts';
import type { Day } from '../domain/day.ts';
import { UnitOfWork } from '../platform/database/unit-of-work.ts';
import { PacketIssueService } from './packet-issue.service.ts';
import { PacketPrinter } from './packet-printer.service.ts';
import type { PrintedPacket } from './packet-printer.service.ts';

export interface HomeNight {
  nightId: string;
  heldOn: Day;
  title: string | null;
  venueName: string;
}

export interface NightsWanted {
  from: Day | null;
  to: Day | null;
  /** the name of a season, as the office shows it; null for every season */
  season: string | null;
}

/** The nights with a game of ours at home that is announced and will be held, by day. */
const HOME_NIGHTS = `select night.id as "nightId", night.held_on as "heldOn", night.title, venue.name as "venueName"
  from night join venue on venue.department_id = $1 and venue.id = night.venue_id
  where night.department_id = $1 and ($2::date is null or night.held_on >= $2) and ($3::date is null or night.held_on <= $3)
    and exists (select 1 from game_night join game on game.department_id = $1 and game.id = game_night.game_id
      join season on season.department_id = $1 and season.id = game.season_id
      where game_night.department_id = $1 and game_night.night_id = night.id and game.announced and game.status not in ('cancelled', 'postponed')
        and ($4::text is null or season.name = $4)
        and exists (select 1 from game_participant join team on team.department_id = $1 and team.id = game_participant.team_id
          join school on school.department_id = $1 and school.id = team.school_id
          where game_participant.department_id = $1 and game_participant.game_id = game.id and game_participant.is_home and school.is_ours))
  order by night.held_on, venue.name, night.id`;

const NOBODY: readonly Role[] = [];

/** The packets of a home season, for printing them all at once. */
@Injectable()
export class PacketsOfSeason {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(PacketIssueService) private readonly issues: PacketIssueService,
    @Inject(PacketPrinter) private readonly printer: PacketPrinter,
  ) {}

  async seasons(): Promise<string[]> {
    const rows = await this.work.run(() => this.work.sql<{ name: string }>('select name from season where department_id = $1 order by starts_on, name'));
    return rows.map((row) => row.name);
  }

  async nights({ from, to, season }: NightsWanted): Promise<HomeNight[]> {
    return this.work.run(() => this.work.sql<HomeNight>(HOME_NIGHTS, [from, to, season]));
  }

  /**
   * The packet as it stands: the latest issue where nothing changed since, else a draft. Issues only where it is told to.
   *
   * @param how `issue` gives it a number first, `draft` prints a draft even where an issue is current
   */
  async print(nightId: string, how: 'asItStands' | 'issue' | 'draft'): Promise<PrintedPacket> {
    if (how === 'issue') await this.issues.issue(nightId);
    return how === 'draft' ? this.printer.printDraft(nightId) : this.printer.print(nightId, undefined, NOBODY);
  }
}
