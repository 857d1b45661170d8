import { Inject, Injectable } from '@nestjs/common';
import { refuse } from '../domain/refusals.ts';
import { UnitOfWork } from '../platform/database/unit-of-work.ts';
import { Makegood } from '../sponsorship/makegoods/makegood.entity.ts';
import { ReadKind } from '../sponsorship/read-kind.entity.ts';
import type { SignedCommitment } from './signed-commitments.service.ts';

/** Reads that are planned as replacements of missed ones: of another kind, with its windows, but owed by the same commitment. */
@Injectable()
export class Replacements {
  constructor(@Inject(UnitOfWork) private readonly work: UnitOfWork) {}

  /**
   * The commitment as it is read for this makegood.
   *
   * @throws Refused `unknown-makegood`, `makegood-of-another-commitment`, `makegood-all-placed`
   */
  async of(makegoodId: string, commitment: SignedCommitment): Promise<SignedCommitment> {
    const makegood = (await this.work.first(Makegood, { id: makegoodId })) ?? refuse('unknown-makegood');
    if (makegood.commitmentId !== commitment.id) refuse('makegood-of-another-commitment');
    await this.work.lock(Makegood, [makegoodId]);
    const [placed] = await this.work.sql<{ reads: number }>(
      `select count(*)::int as reads from placement left join sign_off on sign_off.department_id = $1 and sign_off.night_id = placement.night_id
        where placement.department_id = $1 and placement.makegood_id = $2
          and (sign_off.id is null or exists (select from counted_read join log_entry on log_entry.department_id = $1 and log_entry.id = counted_read.entry_id
            where counted_read.department_id = $1 and log_entry.placement_id = placement.id))`,
      [makegoodId],
    );
    if (placed!.reads >= makegood.replacementReads) refuse('makegood-all-placed');
    const kind = await this.work.one(ReadKind, makegood.replacementReadKindId);
    return { ...commitment, readKindId: kind.id, readKindName: kind.name, windows: kind.windows, placeGroup: kind.placeGroup, sponsorsPerGame: kind.sponsorsPerGame, counting: 'perTerm' };
  }
}
