import { Inject, Injectable } from '@nestjs/common';
import type { JournalEntry, JournalNames, JournalTeam } from '../../domain/billing/journal-lines.ts';
import { journalWords } from '../../domain/billing/journal-words.ts';
import type { Day } from '../../domain/day.ts';
import type { Cents } from '../../domain/money.ts';
import { AccountNames } from '../../ledger/account-names.service.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { IncomeTeams } from '../income/income-teams.service.ts';

interface EntryRow {
  id: string;
  eventId: string;
  kind: string;
  entryOn: Day;
  bookedOn: Day;
  documentNumber: string | null;
  sponsorName: string | null;
  contractNumber: string | null;
}

interface ChangeRow {
  entryId: string;
  account: string;
  cents: Cents;
}

/** Money entries of a seller (`$2`), booked through a day (`$3`), that have left in no batch. Agreed amounts and reads never leave. */
const WAITING = `from ledger_entry as entry join ledger_event as event on event.department_id = entry.department_id and event.id = entry.event_id
  where entry.department_id = $1 and entry.journal = 'money' and event.seller_id = $2 and event.booked_on <= $3
    and not exists (select from journal_batch_entry as gone where gone.department_id = $1 and gone.entry_id = entry.id)`;

const numberOf = (table: string) => `(select number from ${table} where department_id = $1 and id = event.cause_id)`;

const ENTRIES = `select waiting.id, event.id as "eventId", event.happening ->> 'kind' as kind, event.occurred_on as "entryOn", event.booked_on as "bookedOn",
    coalesce(${['invoice', 'payment', 'credit_memo', 'deposit_slip'].map(numberOf).join(', ')}, event.happening ->> 'number') as "documentNumber",
    coalesce(sponsor.name, (select payer.name from payment join payer on payer.department_id = $1 and payer.id = payment.payer_id
      where payment.department_id = $1 and payment.id = event.cause_id)) as "sponsorName", contract.number as "contractNumber"
  from (select entry.id, entry.event_id ${WAITING}) as waiting
  join ledger_event as event on event.department_id = $1 and event.id = waiting.event_id
  left join contract on contract.department_id = $1 and contract.id = event.contract_id
  left join sponsor on sponsor.department_id = $1 and sponsor.id = contract.sponsor_id
  order by event.booked_on, event.recorded_at, event.id`;

const CHANGES = `select entry_id as "entryId", account, sum(amount)::bigint as cents from (
    select entry_id, to_account as account, amount from posting where department_id = $1 and entry_id in (select entry.id ${WAITING})
    union all
    select entry_id, from_account, -amount from posting where department_id = $1 and entry_id in (select entry.id ${WAITING})) as moved
  group by entry_id, account order by account`;

const TEAMS = `select team.id, team.name, school.id as "schoolId", school.name as "schoolName", school.account_code as "schoolCode"
  from team join school on school.department_id = $1 and school.id = team.school_id where team.department_id = $1 and team.id = any($2::uuid[])`;

/** What of the money journal has not left yet, with all its lines are named by. */
@Injectable()
export class JournalEntries {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(AccountNames) private readonly accounts: AccountNames,
    @Inject(IncomeTeams) private readonly teams: IncomeTeams,
  ) {}

  /** In the order in which they were booked. */
  async waiting(sellerId: string, throughOn: Day): Promise<JournalEntry[]> {
    const rows = await this.work.sql<EntryRow>(ENTRIES, [sellerId, throughOn]);
    const changes = new Map<string, ChangeRow[]>();
    for (const change of await this.work.sql<ChangeRow>(CHANGES, [sellerId, throughOn])) {
      const ofEntry = changes.get(change.entryId);
      if (ofEntry) ofEntry.push(change);
      else changes.set(change.entryId, [change]);
    }
    const teams = await this.teams.ofEvents(rows.map((row) => row.eventId));
    return rows.map(({ eventId, kind, ...row }) => ({ ...row, description: journalWords(kind), changes: changes.get(row.id) ?? [], teamIds: teams.get(eventId) ?? [] }));
  }

  async names(entries: readonly JournalEntry[]): Promise<JournalNames> {
    const rows = await this.work.sql<JournalTeam & { id: string }>(TEAMS, [[...new Set(entries.flatMap((entry) => entry.teamIds))]]);
    return { accounts: await this.accounts.byCode(), teams: new Map(rows.map((row) => [row.id, row])) };
  }
}
