import { PartialType } from '@nestjs/swagger';
import { LEVELS } from '../domain/season/game.ts';
import type { Level } from '../domain/season/game.ts';
import { ANNOUNCE_CHOICES } from '../domain/season/player-name.ts';
import type { AnnounceChoice } from '../domain/season/player-name.ts';
import { ChoiceField, FlagField, IdField, ListOf, OptionalTextField, PatternField, TextField } from '../platform/http/fields.ts';
import { ListQuery, QueryFlag } from '../platform/http/lists.ts';

export class TeamDto {
  @IdField() seasonId: string;
  @IdField() schoolId: string;
  @TextField(1, 80) name: string;
  @ChoiceField(LEVELS) level: Level;
  @OptionalTextField(120) headCoach?: string | null;
  @OptionalTextField(120) headCoachSayAs?: string | null;
}

export class ChangeTeamDto extends PartialType(TeamDto) {}

export class TeamListQuery extends ListQuery {
  @IdField({ optional: true }) seasonId?: string;
  @IdField({ optional: true }) schoolId?: string;
  @ChoiceField(LEVELS, { optional: true }) level?: Level;
  @QueryFlag() isOurs?: boolean;
}

/** A line of the list; without `announce` or `sayAs` what is known of the player stays. */
export class RosterPlayerDto {
  @IdField({ optional: true }) id?: string;
  @IdField({ optional: true }) playerId?: string;
  /** somebody who has the name of a player known from before, and is another */
  @FlagField({ optional: true }) isNew?: boolean;
  @PatternField(/^\d{1,3}$/, 'is one to three digits; 0 and 00 are two numbers') number: string;
  @TextField(1, 120) name: string;
  @OptionalTextField(120) sayAs?: string | null;
  @ChoiceField(ANNOUNCE_CHOICES, { optional: true }) announce?: AnnounceChoice;
  @OptionalTextField(40) position?: string | null;
  @OptionalTextField(20) grade?: string | null;
  @FlagField({ optional: true }) isStarter?: boolean;
}

export class RosterDto {
  @ListOf(() => RosterPlayerDto, { most: 200 }) players: RosterPlayerDto[];
}

export interface RosterLine {
  id: string;
  playerId: string;
  number: string;
  name: string;
  sayAs: string | null;
  announce: AnnounceChoice;
  position: string | null;
  grade: string | null;
  isStarter: boolean;
}

export interface TeamView {
  id: string;
  seasonId: string;
  seasonName: string;
  schoolId: string;
  schoolName: string;
  nickname: string;
  isOurs: boolean;
  name: string;
  level: Level;
  headCoach: string | null;
  headCoachSayAs: string | null;
  label: string;
  rosterSize: number;
  version: number;
  /** only where one team is asked for, and only for those who may see students */
  roster?: RosterLine[];
  warnings?: { code: string; sentence: string }[];
}

/** How a level is said in a label. */
export const LEVEL_IN_LABEL: Readonly<Record<Level, string>> = {
  varsity: 'varsity',
  juniorVarsity: 'JV',
  sophomore: 'sophomore',
  freshman: 'freshman',
  middleSchool: 'middle school',
};

const ONLY_A_LEVEL = new Set(['varsity', 'v', 'jv', 'junior varsity', 'sophomore', 'sophomores', 'freshman', 'freshmen', 'middle school']);

/** "Kestrels varsity"; a team whose own name says more, such as "Girls varsity", keeps it: "Kestrels Girls varsity". */
export function teamLabel(team: { nickname: string; name: string; level: Level }): string {
  const plain = team.name.toLowerCase();
  const saysNoMore = ONLY_A_LEVEL.has(plain) || plain === team.nickname.toLowerCase();
  return `${team.nickname} ${saysNoMore ? LEVEL_IN_LABEL[team.level] : team.name}`;
}
