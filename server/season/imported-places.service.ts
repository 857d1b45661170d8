import { Inject, Injectable } from '@nestjs/common';
import type { Level } from '../domain/season/game.ts';
import { foldedText } from '../domain/season/import-headings.ts';
import type { WantedGame } from '../domain/season/import-schedule.ts';
import { UnitOfWork } from '../platform/database/unit-of-work.ts';
import { School } from './school.entity.ts';
import { Team } from './team.entity.ts';
import { Venue } from './venue.entity.ts';

const COLOURS_NOT_KNOWN = { firstColour: '#555555', secondColour: '#FFFFFF' };

/** Opponents and venues that a schedule names and nobody has entered yet. */
@Injectable()
export class ImportedPlaces {
  constructor(@Inject(UnitOfWork) private readonly work: UnitOfWork) {}

  async levelOf(teamId: string): Promise<Level> {
    return (await this.work.one(Team, teamId)).level;
  }

  /** The opponent's team of our team's level, made where it is not there. */
  async opponentTeam(seasonId: string, wanted: WantedGame): Promise<string> {
    const ours = await this.work.one(Team, wanted.teamId);
    const schoolId = wanted.opponentSchoolId ?? (await this.school(wanted.opponentName));
    const teams = await this.work.find(Team, { seasonId, schoolId, level: ours.level }, { order: { id: 'ASC' } });
    const team = teams.find((one) => one.id !== ours.id && one.name === ours.name) ?? teams.find((one) => one.id !== ours.id);
    if (team) return team.id;
    const name = schoolId === ours.schoolId ? `${ours.name} 2` : ours.name;
    const [made] = await this.work.insert(Team, { seasonId, schoolId, level: ours.level, name });
    return made!.id;
  }

  async venue(wanted: WantedGame): Promise<string | null> {
    if (wanted.venueId !== null || wanted.venueName === null) return wanted.venueId;
    const venues = await this.work.find(Venue);
    const known = venues.find((one) => foldedText(one.name) === foldedText(wanted.venueName!));
    if (known) return known.id;
    const [made] = await this.work.insert(Venue, { name: wanted.venueName, isOurs: wanted.isHome });
    return made!.id;
  }

  private async school(name: string): Promise<string> {
    const schools = await this.work.find(School);
    const known = schools.find((one) => foldedText(one.name) === foldedText(name));
    if (known) return known.id;
    const [made] = await this.work.insert(School, { name, shortName: name.slice(0, 40), nickname: name.slice(0, 60), isOurs: false, ...COLOURS_NOT_KNOWN });
    return made!.id;
  }
}
