export type { RosterLine as RosterPlayer, TeamView as Team } from '../../server/season/team.dto.ts';
