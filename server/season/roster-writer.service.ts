import { Inject, Injectable } from '@nestjs/common';
import { In } from 'typeorm';
import { refuse } from '../domain/refusals.ts';
import type { AnnounceChoice } from '../domain/season/player-name.ts';
import { newId } from '../platform/database/ids.ts';
import { UnitOfWork } from '../platform/database/unit-of-work.ts';
import { Player } from './player.entity.ts';
import { RosterEntry } from './roster-entry.entity.ts';

/** A line of a list as it is to be; null ids are made. */
export interface LineToWrite {
  id: string | null;
  playerId: string | null;
  teamId: string;
  schoolId: string;
  number: string;
  name: string;
  sayAs: string | null;
  announce: AnnounceChoice;
  position: string | null;
  grade: string | null;
  isStarter: boolean;
}

/** Writes lists, by form or by file, in an order in which two players may swap their numbers. */
@Injectable()
export class RosterWriter {
  constructor(@Inject(UnitOfWork) private readonly work: UnitOfWork) {}

  async write(leaving: readonly string[], lines: readonly LineToWrite[]): Promise<void> {
    const entries = await this.work.find(RosterEntry, { id: In([...leaving, ...lines.flatMap((line) => line.id ?? [])]) });
    const players = await this.keepPlayers(lines);
    const renumbered = lines.filter((line) => entries.some((entry) => entry.id === line.id && entry.number !== line.number));
    const gone = [...leaving, ...renumbered.map((line) => line.id!)];
    if (gone.length > 0) await this.work.remove(RosterEntry, { id: In(gone) });
    const added: Partial<RosterEntry>[] = [];
    for (const line of lines) {
      const entry = entries.find((one) => one.id === line.id && !gone.includes(one.id));
      const { teamId, number, position, grade, isStarter } = line;
      const row = { teamId, playerId: players.get(line)!, number, position, grade, isStarter };
      if (!entry) added.push({ id: line.id ?? newId(), ...row });
      else if (differs(entry, row)) await this.work.update(RosterEntry, entry.id, null, row);
    }
    await this.work.insert(RosterEntry, added);
  }

  private async keepPlayers(lines: readonly LineToWrite[]): Promise<Map<LineToWrite, string>> {
    const known = await this.work.find(Player, { id: In(lines.flatMap((line) => line.playerId ?? [])) });
    const ids = new Map<LineToWrite, string>();
    const added: Partial<Player>[] = [];
    for (const line of lines) {
      const { schoolId, name, sayAs, announce } = line;
      const player = known.find((one) => one.id === line.playerId);
      ids.set(line, player?.id ?? newId());
      if (!player) added.push({ id: ids.get(line)!, schoolId, name, sayAs, announce });
      else if (differs(player, { name, sayAs, announce })) {
        if (player.erasedAt) refuse('player-erased');
        await this.work.update(Player, player.id, null, { name, sayAs, announce });
      }
    }
    await this.work.insert(Player, added);
    return ids;
  }
}

function differs<Row extends object>(row: Row, wanted: Partial<Row>): boolean {
  return (Object.keys(wanted) as (keyof Row)[]).some((key) => row[key] !== wanted[key]);
}
