import type { Instant } from '../domain/instant.ts';
import { ANNOUNCE_CHOICES } from '../domain/season/player-name.ts';
import type { AnnounceChoice } from '../domain/season/player-name.ts';
import { ChoiceField, IdField, OptionalTextField, TextField } from '../platform/http/fields.ts';
import { ListQuery } from '../platform/http/lists.ts';
import type { Player } from './player.entity.ts';

export class ChangePlayerDto {
  @TextField(1, 120, { optional: true }) name?: string;
  @OptionalTextField(120) sayAs?: string | null;
  @ChoiceField(ANNOUNCE_CHOICES, { optional: true }) announce?: AnnounceChoice;
}

export class PlayerListQuery extends ListQuery {
  @IdField({ optional: true }) schoolId?: string;
}

export interface PlayerView {
  id: string;
  schoolId: string;
  name: string;
  sayAs: string | null;
  announce: AnnounceChoice;
  erasedAt: Instant | null;
  /** number, team and season of the list that the player stood on last; only in lists */
  lastSeen?: string | null;
  version: number;
}

export function playerView(player: Player): PlayerView {
  const { departmentId: _, ...view } = player;
  return view;
}
