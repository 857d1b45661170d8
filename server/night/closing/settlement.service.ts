import { Inject, Injectable } from '@nestjs/common';
import type { Settlement } from '../../domain/night/settle.ts';
import { whyNotSettle } from '../../domain/night/settle.ts';
import type { LogEntry } from '../../domain/night/log-entry.ts';
import { refuse } from '../../domain/refusals.ts';
import { newId } from '../../platform/database/ids.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';

/** What persons have settled of a night's log; kept as history, so that every later count goes by it. */
@Injectable()
export class Settlements {
  constructor(@Inject(UnitOfWork) private readonly work: UnitOfWork) {}

  /** In the order in which they were said. */
  async of(nightId: string): Promise<Settlement[]> {
    return this.work.sql<Settlement>(
      `select entry_id as "entryId", answer, same_as_entry_id as "sameAsEntryId" from night_settlement
        where department_id = $1 and night_id = $2 order by recorded_at, id`,
      [nightId],
    );
  }

  /**
   * Keeps answers one after another; the night is locked by whoever calls.
   *
   * @throws Refused with the code of the rule that says no
   */
  async keep(nightId: string, asked: readonly Settlement[], entries: readonly LogEntry[], reason: string | null): Promise<void> {
    if (asked.length === 0) return;
    const before = await this.of(nightId);
    for (const [place, one] of asked.entries()) {
      const code = whyNotSettle(one, entries, [...before, ...asked.slice(0, place)]);
      if (code) refuse(code);
    }
    const settledByPersonId = this.work.personId;
    await this.work.add('night_settlement', asked.map((one) => ({ id: newId(), nightId, ...one, reason, settledByPersonId })));
  }
}
