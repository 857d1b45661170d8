import { Inject, Injectable } from '@nestjs/common';
import type { Role } from '../domain/access/rights.ts';
import type { PlayerView } from '../season/player.dto.ts';
import { PlayerService } from '../season/player.service.ts';
import { HonoursLists } from './honours-list.service.ts';
import { IssueShelf } from './issue-shelf.service.ts';

/** A student's name is taken out everywhere it stands: the list of players and every packet that was issued. */
@Injectable()
export class Erasing {
  constructor(
    @Inject(PlayerService) private readonly players: PlayerService,
    @Inject(HonoursLists) private readonly honours: HonoursLists,
    @Inject(IssueShelf) private readonly issues: IssueShelf,
  ) {}

  async erase(playerId: string, roles: readonly Role[]): Promise<PlayerView> {
    const erased = await this.players.erase(playerId, roles);
    await this.honours.forget(playerId);
    await this.issues.eraseNaming(playerId);
    return erased;
  }
}
