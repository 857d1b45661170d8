import { WINDOW_KINDS } from '../domain/season/sport-profile.ts';
import type { WindowKind } from '../domain/season/sport-profile.ts';
import { SPORT_FILES } from '../domain/season/sports/all-sports.ts';
import { ChoiceField, CountField, OptionalTextField } from '../platform/http/fields.ts';
import { ListQuery } from '../platform/http/lists.ts';

const SPORTS = Object.keys(SPORT_FILES);

export class ChangeWindowPlacesDto {
  @CountField(0, 20) places: number;
}

export class WindowPlacesDto extends ChangeWindowPlacesDto {
  @ChoiceField(SPORTS) sport: string;
  @ChoiceField(WINDOW_KINDS) windowKind: WindowKind;
  @OptionalTextField(60) placeGroup?: string | null;
}

export class WindowPlacesListQuery extends ListQuery {
  @ChoiceField(SPORTS, { optional: true }) sport?: string;
}

export interface WindowPlacesView {
  id: string;
  sport: string;
  windowKind: WindowKind;
  /** null: all read kinds together */
  placeGroup: string | null;
  places: number;
  version: number;
}
