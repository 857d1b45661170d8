import { Inject, Injectable } from '@nestjs/common';
import type { Instant } from '../domain/instant.ts';
import type { Binder } from '../domain/packet/page-plan.ts';
import { newId } from '../platform/database/ids.ts';
import { UnitOfWork } from '../platform/database/unit-of-work.ts';
import { PacketContentRow } from './packet-content.entity.ts';
import type { PacketContent } from './packet-content.ts';

/** Why an issue was made: the first, something changed, or a family chose otherwise about a name in the one before. */
export type IssueReason = 'first' | 'change' | 'choice';

export interface IssueRow {
  id: string;
  nightId: string;
  number: number;
  contentDigest: string;
  recordedAt: Instant;
  reason: IssueReason | null;
  issuedByName: string | null;
  /** it names a student whose family has since chosen otherwise */
  isSealed: boolean;
  erasedAt: Instant | null;
}

export interface IssueWithPages extends IssueRow {
  /** null for an issue from before packets were frozen */
  pages: Binder | null;
}

const ROW = `packet_issue.id, packet_issue.night_id as "nightId", packet_issue.number, packet_issue.content_digest as "contentDigest",
  packet_issue.recorded_at as "recordedAt", packet_issue.reason, person.name as "issuedByName", packet_content.erased_at as "erasedAt",
  exists (select 1 from player where player.department_id = $1 and player.id = any(packet_issue.named_player_ids) and (player.announce <> 'name' or player.erased_at is not null)) as "isSealed"`;
const FROM = `from packet_issue left join packet_content on packet_content.department_id = $1 and packet_content.packet_issue_id = packet_issue.id
  left join person on person.id = packet_issue.issued_by_person_id where packet_issue.department_id = $1`;

const LATEST = `select distinct on (packet_issue.night_id) ${ROW} ${FROM} and packet_issue.night_id = any($2::uuid[]) order by packet_issue.night_id, packet_issue.number desc`;
const ALL = `select ${ROW}, packet_issue.pages ${FROM} and packet_issue.night_id = $2 order by packet_issue.number desc`;

const ERASE = `update packet_content set content = null, erased_at = $3, version = version + 1 where department_id = $1 and content is not null
  and packet_issue_id = any(array(select id from packet_issue where department_id = $1 and $2 = any(named_player_ids)))`;

/** The issues of packets as they are kept. */
@Injectable()
export class IssueShelf {
  constructor(@Inject(UnitOfWork) private readonly work: UnitOfWork) {}

  /** The latest issue of each night that has one. */
  async latest(nightIds: readonly string[]): Promise<Map<string, IssueRow>> {
    const rows = await this.work.sql<IssueRow>(LATEST, [nightIds]);
    return new Map(rows.map((row) => [row.nightId, row]));
  }

  /** All issues of a night, the latest first. */
  async all(nightId: string): Promise<IssueWithPages[]> {
    return this.work.sql<IssueWithPages>(ALL, [nightId]);
  }

  async contentOf(issueId: string): Promise<PacketContent | null> {
    return (await this.work.first(PacketContentRow, { packetIssueId: issueId }))?.content ?? null;
  }

  async add(issue: Pick<IssueRow, 'nightId' | 'number' | 'contentDigest'> & { reason: IssueReason; pages: Binder; content: PacketContent; cues: readonly object[]; namedPlayerIds: readonly string[] }): Promise<void> {
    const id = newId();
    await this.work.sql(
      `insert into packet_issue (department_id, id, night_id, number, cues, content_digest, issued_by_person_id, pages, named_player_ids, reason)
       values ($1, $2, $3, $4, $5, $6, $7, $8, $9::uuid[], $10)`,
      [id, issue.nightId, issue.number, JSON.stringify(issue.cues), issue.contentDigest, this.work.scope.personId, JSON.stringify(issue.pages), issue.namedPlayerIds, issue.reason],
    );
    await this.work.insert(PacketContentRow, { packetIssueId: id, content: issue.content });
  }

  /** The words of every issue that names a student go and do not come back. */
  async eraseNaming(playerId: string): Promise<void> {
    await this.work.sql(ERASE, [playerId, new Date().toISOString()]);
  }
}
