import { Inject, Injectable } from '@nestjs/common';
import { sayAsCaught } from '../../domain/night/say-as-caught.ts';
import type { SayAsCaught } from '../../domain/night/say-as-caught.ts';
import { isSameName } from '../../domain/night/desk/sheet/worn-tonight.ts';
import { newId } from '../../platform/database/ids.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { Player } from '../../season/player.entity.ts';
import { RosterEntry } from '../../season/roster-entry.entity.ts';
import type { LoggedEntry } from '../log/night-log.service.ts';

interface OpponentPlayer {
  teamId: string;
  schoolId: string;
  playerId: string | null;
  name: string | null;
  sayAs: string | null;
  announce: string | null;
  isErased: boolean;
  /** null where the player is the school's and not on this team's list */
  number: string | null;
}

/** Every player of the schools that are not ours; a school without players has one row with none. */
const OPPONENTS = `select team.id as "teamId", team.school_id as "schoolId", player.id as "playerId", player.name, player.say_as as "sayAs", player.announce,
    player.erased_at is not null as "isErased", roster_entry.number
  from team join school on school.department_id = $1 and school.id = team.school_id and not school.is_ours
  left join player on player.department_id = $1 and player.school_id = team.school_id
  left join roster_entry on roster_entry.department_id = $1 and roster_entry.team_id = team.id and roster_entry.player_id = player.id
  where team.department_id = $1 and team.id = any($2::uuid[])`;

/** Keeps for next year how the visiting coach said the names. What the office wrote is never written over. */
@Injectable()
export class WornNumbers {
  constructor(@Inject(UnitOfWork) private readonly work: UnitOfWork) {}

  async keep(entries: readonly LoggedEntry[]): Promise<void> {
    const caught = sayAsCaught(entries);
    if (caught.length === 0) return;
    const players = await this.work.sql<OpponentPlayer>(OPPONENTS, [[...new Set(caught.map((one) => one.teamId))]]);
    for (const one of caught) await this.keepOne(one, players.filter((player) => player.teamId === one.teamId));
  }

  private async keepOne({ number, name, sayAs, teamId }: SayAsCaught, players: readonly OpponentPlayer[]): Promise<void> {
    const wearer = players.find((player) => player.number === number);
    const known = wearer ?? players.find((player) => player.playerId !== null && isSameName(player.name, name));
    if (known?.playerId) {
      const isTheirs = name === null || isSameName(known.name, name);
      if (isTheirs && !known.isErased && known.announce === 'name' && known.sayAs === null) await this.work.update(Player, known.playerId, null, { sayAs });
      return;
    }
    const [team] = players;
    if (team === undefined || name === null) return;
    const playerId = newId();
    await this.work.insert(Player, { id: playerId, schoolId: team.schoolId, name, sayAs, announce: 'name' });
    await this.work.insert(RosterEntry, { id: newId(), teamId, playerId, number, position: null, grade: null, isStarter: false });
  }
}
