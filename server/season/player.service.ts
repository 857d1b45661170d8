import { Inject, Injectable } from '@nestjs/common';
import { mayUse } from '../domain/access/rights.ts';
import type { Role } from '../domain/access/rights.ts';
import type { Instant } from '../domain/instant.ts';
import { refuse } from '../domain/refusals.ts';
import { UnitOfWork } from '../platform/database/unit-of-work.ts';
import { Conditions, contains, pageOf } from '../platform/http/lists.ts';
import type { Listed } from '../platform/http/lists.ts';
import type { ChangePlayerDto, PlayerListQuery, PlayerView } from './player.dto.ts';
import { playerView } from './player.dto.ts';
import { Player } from './player.entity.ts';
import { LAST_SEEN } from './players-there.service.ts';
import { withoutSilent } from './roster.service.ts';

const VIEW = `id, school_id as "schoolId", name, say_as as "sayAs", announce, erased_at as "erasedAt", ${LAST_SEEN} as "lastSeen", version`;
const SORTS = { name: 'name collate "und-x-icu"', announce: 'announce' };
const ERASED_NAME = 'Erased';

@Injectable()
export class PlayerService {
  constructor(@Inject(UnitOfWork) private readonly work: UnitOfWork) {}

  async list(query: PlayerListQuery, roles: readonly Role[]): Promise<Listed<PlayerView>> {
    const showsSilent = mayUse(roles, 'change students');
    const on = new Conditions('department_id')
      .add('id = any(?::uuid[])', query.id)
      .add('school_id = ?', query.schoolId)
      .when(!showsSilent && query.q !== undefined, `announce = 'name'`)
      .add('name ilike ?', contains(query.q));
    const [count] = await this.work.sql<{ total: number }>(`select count(*) as total from player where ${on.where}`, on.parameters);
    const data = await this.work.sql<PlayerView>(`select ${VIEW} from player where ${on.where} ${pageOf(query, SORTS)}`, on.parameters);
    return { data: showsSilent ? data : data.map(withoutSilent), total: count?.total ?? 0 };
  }

  async one(id: string, roles: readonly Role[]): Promise<PlayerView> {
    const view = playerView(await this.work.one(Player, id));
    return mayUse(roles, 'change students') ? view : withoutSilent(view);
  }

  async change(id: string, version: number, form: ChangePlayerDto, roles: readonly Role[]): Promise<PlayerView> {
    const player = await this.work.one(Player, id);
    if (player.erasedAt) refuse('player-erased');
    await this.work.update(Player, id, version, form);
    return this.one(id, roles);
  }

  /** The name goes and does not come back; lists, logs and books keep the player's number and id. */
  async erase(id: string, roles: readonly Role[]): Promise<PlayerView> {
    const player = await this.work.one(Player, id);
    if (!player.erasedAt) {
      const erasedAt = new Date().toISOString() as Instant;
      await this.work.update(Player, id, null, { name: ERASED_NAME, sayAs: null, announce: 'silence', erasedAt });
    }
    return this.one(id, roles);
  }
}
