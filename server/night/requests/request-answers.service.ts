import { Inject, Injectable } from '@nestjs/common';
import { formNamesPerson } from '../../domain/night/desk/requests/request-form.ts';
import { stateAfter, whyNotAnswer } from '../../domain/night/desk/requests/request-states.ts';
import type { KeptRequest, RequestAnswer, RequestState } from '../../domain/night/desk/requests/request.ts';
import { answerOf } from '../../domain/night/desk/requests/requests-of-night.ts';
import type { RequestEntry } from '../../domain/night/desk/requests/requests-of-night.ts';
import { refuse } from '../../domain/refusals.ts';
import { isId } from '../../platform/database/ids.ts';
import { Notices } from '../../platform/database/notices.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';

export interface KeptRow extends KeptRequest {
  nightId: string;
  state: RequestState;
}

const KEPT = `select id, night_id as "nightId", source, kind, fields, state, answers, asked_at as "askedAt" from night_request where department_id = $1`;

/** What becomes of the requests that the server keeps: answered by the office, by an entry of the log, or by the end of the night. */
@Injectable()
export class RequestAnswers {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(Notices) private readonly notices: Notices,
  ) {}

  async of(nightId: string): Promise<KeptRow[]> {
    return this.work.sql<KeptRow>(`${KEPT} and night_id = $2 order by asked_at, id`, [nightId]);
  }

  /** @throws Refused `not-found`, or why it cannot be answered so */
  async answer(id: string, answer: RequestAnswer): Promise<KeptRow> {
    const [row] = isId(id) ? await this.work.sql<KeptRow>(`${KEPT} and id = $2 for update`, [id]) : [];
    if (!row) return refuse('not-found');
    const no = whyNotAnswer({ ...row, namesPerson: formNamesPerson(row.kind, row.fields) }, answer);
    if (no) refuse(no);
    const answered = await this.store(row, [...row.answers, answer]);
    return answered;
  }

  /**
   * What the device wrote into the log, in the unit of work that stores it. An answer that is not allowed stays in the log and changes
   * nothing; one that is taken back never was.
   */
  async take(nightId: string, entries: readonly RequestEntry[]): Promise<void> {
    const answers = entries.flatMap((entry) => answerOf(entry) ?? []).filter(({ requestId }) => isId(requestId));
    const gone = new Set(entries.flatMap(({ kind, takesBackEntryId }) => (kind === 'takenBack' && takesBackEntryId !== null ? [takesBackEntryId] : [])));
    if (answers.length === 0 && gone.size === 0) return;
    const rows = await this.work.sql<KeptRow>(
      `${KEPT} and night_id = $2 and (id = any($3::uuid[]) or jsonb_path_query_array(answers, '$[*].entryId') ?| $4::text[]) order by id for update`,
      [nightId, answers.map(({ requestId }) => requestId), [...gone]],
    );
    for (const row of rows) {
      const added = answers.filter(({ requestId }) => requestId === row.id).map(({ answer }) => answer);
      await this.store(row, [...row.answers, ...added].filter(({ entryId }) => entryId === null || !gone.has(entryId)));
    }
  }

  /** At sign-off: what waits or was not read has expired. */
  async expireOpen(nightId: string): Promise<void> {
    const open = await this.work.sql<KeptRow>(`${KEPT} and night_id = $2 and state in ('waiting', 'approved') order by id for update`, [nightId]);
    const expired: RequestAnswer = { answer: 'expired', reason: null, nameAllowedBy: null, wordsChecked: false, entryId: null, answeredAt: new Date().toISOString(), answeredByName: null };
    for (const row of open) await this.store(row, [...row.answers, expired]);
  }

  private async store(row: KeptRow, answers: readonly RequestAnswer[]): Promise<KeptRow> {
    const state = stateAfter({ kind: row.kind, namesPerson: formNamesPerson(row.kind, row.fields) }, answers);
    await this.work.sql('update night_request set state = $3, answers = $4::jsonb, version = version + 1 where department_id = $1 and id = $2', [row.id, state, JSON.stringify(answers)]);
    await this.notices.tell('requests', row.nightId);
    return { ...row, state, answers };
  }
}
