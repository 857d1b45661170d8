import { Inject, Injectable } from '@nestjs/common';
import { StatementNames } from '../../billing/statements/statement-names.service.ts';
import type { Told } from '../../billing/statements/statement-names.service.ts';
import type { Day } from '../../domain/day.ts';
import { refuse } from '../../domain/refusals.ts';
import { isId } from '../../platform/database/ids.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { FulfillmentService } from '../fulfillment/fulfillment.service.ts';
import { ACCOUNTS, CHANGES, HEADS, OWN_TITLES, STANDINGS } from './performance.sql.ts';
import { contentOf } from './statement-content.ts';
import type { AccountRow, ChangeRow, HeadRow, StandingRow, StatementFacts } from './statement-content.ts';
import { digestOfStatement } from './statement-digest.ts';

export interface ReadStatement extends StatementFacts {
  content: ReturnType<typeof contentOf>;
  contentDigest: string;
}

/** What statements of performance say, from the ledgers and the log alone, read anew each time. Inside a unit of work. */
@Injectable()
export class StatementContents {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(FulfillmentService) private readonly fulfillment: FulfillmentService,
    @Inject(StatementNames) private readonly names: StatementNames,
  ) {}

  /** @throws Refused `not-found`, `statement-before-signing` */
  async of(contractId: string, throughOn: Day): Promise<ReadStatement> {
    if (!isId(contractId)) return refuse('not-found');
    const [read] = await this.ofContracts([contractId], throughOn);
    return read ?? refuse('not-found');
  }

  /**
   * As many statements to the database for a hundred contracts as for one.
   *
   * @throws Refused `statement-before-signing` where one of them is a draft
   */
  async ofContracts(ids: readonly string[], throughOn: Day): Promise<ReadStatement[]> {
    const heads = await this.work.sql<HeadRow>(HEADS, [ids]);
    if (heads.some((head) => head.state === 'draft')) refuse('statement-before-signing');
    const views = new Map((await this.fulfillment.ofContracts(heads.map((head) => head.contractId))).map((view) => [view.contractId, view]));
    const standings = new Map((await this.work.sql<StandingRow>(STANDINGS, [ids, throughOn])).map((row) => [row.commitmentId, row]));
    const changes = (await this.work.sql<ChangeRow>(CHANGES, [ids, throughOn])).map(withoutForeignReason);
    const account = await this.work.sql<AccountRow>(ACCOUNTS, [ids, throughOn]);
    const told: ReadonlyMap<string, Told> = await this.names.tell(null, [...changes, ...account], undefined, true);
    const titles = await this.work.sql<{ sponsorId: string; title: string }>(OWN_TITLES, [ids]);
    const titlesOf = (sponsorId: string): Set<string> => new Set(titles.flatMap((copy) => (copy.sponsorId === sponsorId ? [copy.title] : [])));
    const rank = new Map(ids.map((id, place) => [id, place]));
    return heads
      .toSorted((a, b) => rank.get(a.contractId)! - rank.get(b.contractId)!)
      .flatMap((head) => {
        const view = views.get(head.contractId);
        if (!view) return [];
        const own = <Row extends { contractId: string }>(rows: readonly Row[]): Row[] => rows.filter((row) => row.contractId === head.contractId);
        const facts: StatementFacts = { head, view, standings, changes: own(changes), account: own(account), ownTitles: titlesOf(head.sponsorId), told, throughOn };
        const content = contentOf(facts);
        return [{ ...facts, content, contentDigest: digestOfStatement(content) }];
      });
  }
}

/** What was written to the owner before was not written for this sponsor. */
function withoutForeignReason(row: ChangeRow): ChangeRow {
  if (!row.isOfFormerOwner) return row;
  const { reason: _, ...happening } = row.happening as ChangeRow['happening'] & { reason?: string };
  return { ...row, happening: happening as ChangeRow['happening'] };
}
