import { Inject, Injectable } from '@nestjs/common';
import { refuse } from '../../domain/refusals.ts';
import { newId } from '../../platform/database/ids.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { Amendments } from '../../night/closing/amendment.service.ts';
import type { AmendDto } from '../../night/closing/closing.dto.ts';
import { SignedCommitments } from '../../planning/signed-commitments.service.ts';
import type { ReadDispute } from './read-dispute.entity.ts';

const LONGEST_REASON = 300;

type Amended = AmendDto['entries'][number];

/** Where a sponsor is right, the night is amended: a read is taken back, or one that the log did not have is added. */
@Injectable()
export class DisputeAmending {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(Amendments) private readonly amendments: Amendments,
    @Inject(SignedCommitments) private readonly commitments: SignedCommitments,
  ) {}

  /** @throws Refused `night-not-signed-off`, `entry-taken-back-already` */
  async takeBack({ nightId, gameId, entryId }: ReadDispute, answer: string): Promise<void> {
    await this.amend(nightId, { kind: 'takenBack', gameId, takesBackEntryId: entryId, reason: 'asked about by the sponsor' }, answer, false);
  }

  /** @throws Refused `night-not-signed-off`, `game-needed` */
  async add({ id, nightId, commitmentId }: ReadDispute, gameId: string | null, answer: string): Promise<void> {
    const isOnNight = gameId !== null && (await this.work.sql('select 1 from game_night where department_id = $1 and night_id = $2 and game_id = $3', [nightId, gameId])).length > 0;
    if (!isOnNight) refuse('game-needed', {}, { gameId: 'is missing' });
    const commitment = (await this.commitments.byId([commitmentId])).get(commitmentId) ?? refuse('unknown-commitment');
    const isMention = commitment.counting === 'onOccurrence';
    const cueKey = isMention ? null : `game:${gameId}/asked/${id}`;
    await this.amend(nightId, { kind: isMention ? 'mention' : 'read', outcome: 'given', gameId, commitmentId, cueKey }, answer, isMention);
  }

  private async amend(nightId: string, entry: Partial<Amended>, answer: string, needsWord: boolean): Promise<void> {
    const id = newId();
    const form: AmendDto = {
      deviceId: newId(),
      reason: `A sponsor asked: ${answer}`.slice(0, LONGEST_REASON),
      entries: [{ id, sequence: 1, occurredAt: new Date().toISOString(), ...entry } as Amended],
      ...(needsWord ? { decisions: [{ entryId: id, counts: true }] } : {}),
    };
    const { results } = await this.amendments.amend(nightId, form);
    const [result] = results;
    if (result?.status !== 'stored') refuse(result?.code ?? 'busy');
  }
}
