import { Inject, Injectable } from '@nestjs/common';
import type { Happening } from '../../domain/sponsorship/happening.ts';
import { sentenceFor } from '../../domain/sponsorship/sentence.ts';
import type { Names } from '../../domain/sponsorship/sentence.ts';
import { isId } from '../../platform/database/ids.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { dayText } from '../../platform/typesetting/amount-text.ts';
import { isPaymentHappening, paymentSentence } from '../payments/payment-happening.ts';
import type { PaymentHappening } from '../payments/payment-happening.ts';
import type { CauseView } from './statement.dto.ts';

export interface EventRow {
  eventId: string;
  happening: Happening | PaymentHappening;
  cause: string;
  causeId: string | null;
  occurredOn: string;
  bookedOn: string;
}

export interface Told {
  sentence: string;
  cause: CauseView | null;
}

const NIGHTS = 'select id, title as label, held_on as day from night where department_id = $1 and id = any($2::uuid[])';

const GAMES = `select game.id, game.played_on as day,
    coalesce(string_agg(school.nickname, ', ' order by participant.place) filter (where not participant.is_home), '')
      || ' at ' || coalesce(string_agg(school.nickname, ', ' order by participant.place) filter (where participant.is_home), '') as label
  from game left join game_participant as participant on participant.department_id = $1 and participant.game_id = game.id
    left join team on team.department_id = $1 and team.id = participant.team_id
    left join school on school.department_id = $1 and school.id = team.school_id
  where game.department_id = $1 and game.id = any($2::uuid[]) group by game.department_id, game.id`;

const DOCUMENTS: Readonly<Record<string, { sql: string; word: string }>> = {
  invoice: { sql: 'select id, number as label from invoice where department_id = $1 and id = any($2::uuid[])', word: 'Invoice' },
  payment: { sql: 'select id, number as label from payment where department_id = $1 and id = any($2::uuid[])', word: 'Payment' },
  creditMemo: { sql: 'select id, number as label from credit_memo where department_id = $1 and id = any($2::uuid[])', word: 'Credit memo' },
  depositSlip: { sql: 'select id, number as label from deposit_slip where department_id = $1 and id = any($2::uuid[])', word: 'Deposit slip' },
  contract: { sql: 'select id, coalesce(number, title) as label from contract where department_id = $1 and id = any($2::uuid[])', word: 'Contract' },
};

const LINES = `select commitment.id, read_kind.name from commitment
     join read_kind on read_kind.department_id = commitment.department_id and read_kind.id = commitment.read_kind_id
    where commitment.department_id = $1 and commitment.id = any($2::uuid[])
   union all select id, name from benefit where department_id = $1 and id = any($2::uuid[])`;

/** Every line a happening names, whichever its kind. */
function lineIdsIn(happening: object): string[] {
  return Object.entries(happening).flatMap(([name, value]) => {
    if (typeof value === 'string') return /lineId$/i.test(name) ? [value] : [];
    if (name === 'terms' || typeof value !== 'object' || value === null) return [];
    return (Array.isArray(value) ? value : [value]).flatMap((one) => (typeof one === 'object' && one !== null ? lineIdsIn(one) : []));
  });
}

/** Words for what a ledger knows only by id: the sentence of a happening, and the name of what caused it. */
@Injectable()
export class StatementNames {
  constructor(@Inject(UnitOfWork) private readonly work: UnitOfWork) {}

  /**
   * Sentences and causes by the event's id, in a handful of statements however many lines there are.
   *
   * @param contractId the contract they all belong to; null where they belong to several, or to none
   * @param known what its lines are called, where the caller has asked already
   * @param isForSponsor a night is told by its day: somebody typed its title, and it may name a student
   */
  async tell(contractId: string | null, rows: readonly EventRow[], known?: ReadonlyMap<string, string>, isForSponsor = false): Promise<Map<string, Told>> {
    const lines = known ?? (contractId === null ? await this.namesOfLines(rows) : await this.lineNames(contractId));
    const labels = await this.labels(rows, isForSponsor);
    const names: Names = {
      line: (lineId) => lines.get(lineId),
      game: (gameId) => labels.get(gameId),
      contract: (id) => labels.get(id),
      day: (day) => dayText(day, 'en-US'),
    };
    return new Map(
      rows.map(({ eventId, happening, cause, causeId }) => {
        const sentence = isPaymentHappening(happening) ? paymentSentence(happening) : sentenceFor(happening, names);
        const label = causeId === null ? null : (labels.get(causeId) ?? null);
        return [eventId, { sentence, cause: causeId === null || label === null ? null : { kind: cause, id: causeId, label } }];
      }),
    );
  }

  /** What commitments and benefits are called. */
  async lineNames(contractId: string): Promise<Map<string, string>> {
    const rows = await this.work.sql<{ id: string; name: string }>(
      `select commitment.id, read_kind.name from commitment
         join read_kind on read_kind.department_id = commitment.department_id and read_kind.id = commitment.read_kind_id
        where commitment.department_id = $1 and commitment.contract_id = $2
       union all select benefit.id, benefit.name from benefit where benefit.department_id = $1 and benefit.contract_id = $2`,
      [contractId],
    );
    return new Map(rows.map((row) => [row.id, row.name]));
  }

  private async namesOfLines(rows: readonly EventRow[]): Promise<Map<string, string>> {
    const ids = new Set(rows.flatMap(({ happening }) => lineIdsIn(happening)).filter(isId));
    const names = await this.asked<{ id: string; name: string }>(LINES, [...ids]);
    return new Map(names.map((row) => [row.id, row.name]));
  }

  private async labels(rows: readonly EventRow[], isForSponsor: boolean): Promise<Map<string, string>> {
    const causes = (kind: string) => rows.flatMap((row) => (row.cause === kind && row.causeId ? [row.causeId] : []));
    const games = rows.flatMap(({ happening }) => ('gameId' in happening && happening.gameId ? [happening.gameId] : [])).filter(isId);
    const labels = new Map<string, string>();
    // What is counted by the night carries the night's id where others carry the game's.
    for (const row of await this.asked<{ id: string; label: string | null; day: string }>(NIGHTS, [...causes('night'), ...games])) {
      labels.set(row.id, (isForSponsor ? null : row.label) ?? `Night of ${dayText(row.day, 'en-US')}`);
    }
    for (const row of await this.asked<{ id: string; label: string; day: string }>(GAMES, [...causes('game'), ...games])) {
      labels.set(row.id, `${row.label}, ${dayText(row.day, 'en-US')}`);
    }
    for (const [kind, { sql, word }] of Object.entries(DOCUMENTS)) {
      for (const row of await this.asked<{ id: string; label: string }>(sql, causes(kind))) labels.set(row.id, `${word} ${row.label}`);
    }
    return labels;
  }

  private async asked<Row>(sql: string, ids: readonly string[]): Promise<Row[]> {
    return ids.length === 0 ? [] : this.work.sql<Row>(sql, [[...new Set(ids)]]);
  }
}
