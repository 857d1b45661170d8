import { PartialType } from '@nestjs/swagger';
import type { Day } from '../domain/day.ts';
import { PROFILES } from '../domain/season/profiles.ts';
import type { Sport } from '../domain/season/sport-profile.ts';
import { ChoiceField, DayField, TextField } from '../platform/http/fields.ts';
import { ListQuery } from '../platform/http/lists.ts';
import type { Season } from './season.entity.ts';

export const SPORTS: readonly Sport[] = [...new Set(PROFILES.map((profile) => profile.sport))];

export class SeasonDto {
  @TextField(1, 120) name: string;
  @ChoiceField(SPORTS) sport: Sport;
  @DayField() startsOn: Day;
  @DayField() endsOn: Day;
}

export class ChangeSeasonDto extends PartialType(SeasonDto) {}

export class SeasonListQuery extends ListQuery {
  @ChoiceField(SPORTS, { optional: true }) sport?: Sport;
}

export interface SeasonView {
  id: string;
  name: string;
  sport: Sport;
  startsOn: Day;
  endsOn: Day;
  followsSeasonId: string | null;
  /** the season that this one was rolled over into */
  followedBySeasonId: string | null;
  version: number;
}

export function seasonView(season: Season, followedBySeasonId: string | null): SeasonView {
  const { departmentId: _, ...view } = season;
  return { ...view, followedBySeasonId };
}
