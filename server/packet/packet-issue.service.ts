import { Inject, Injectable } from '@nestjs/common';
import { refuse } from '../domain/refusals.ts';
import { isReady } from '../domain/packet/readiness.ts';
import { isId, newId } from '../platform/database/ids.ts';
import { UnitOfWork } from '../platform/database/unit-of-work.ts';
import type { Listed } from '../platform/http/lists.ts';
import type { IssueView, PacketView, PaperState } from './packet.dto.ts';
import { PacketService } from './packet.service.ts';
import type { Composed } from './packet.service.ts';

interface IssueRow extends IssueView {
  nightId: string;
  contentDigest: string;
}

const ISSUES = `select id, night_id as "nightId", number, content_digest as "contentDigest", recorded_at as "recordedAt" from packet_issue
  where department_id = $1 and night_id = any($2::uuid[]) order by number desc`;

/** The packet of a night gets its numbers here; composing is another's. */
@Injectable()
export class PacketIssueService {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(PacketService) private readonly packets: PacketService,
  ) {}

  async one(nightId: string): Promise<PacketView> {
    const { packet, digest } = await this.packets.one(nightId);
    const [latest] = await this.issueRows([nightId]);
    return {
      ...packet,
      isReady: isReady(packet),
      contentDigest: digest,
      issue: latest ? issueView(latest) : null,
      isOutOfDate: latest !== undefined && latest.contentDigest !== digest,
    };
  }

  async issues(nightId: string): Promise<Listed<IssueView & { isCurrent: boolean }>> {
    const { digest } = await this.packets.one(nightId);
    const rows = await this.issueRows([nightId]);
    return { data: rows.map((row) => ({ ...issueView(row), isCurrent: row.contentDigest === digest })), total: rows.length };
  }

  /** Gives the packet as it stands the next number; where nothing changed since the latest issue, that one stays. */
  async issue(nightId: string): Promise<IssueView> {
    if (isId(nightId)) await this.work.sql('select 1 from night where department_id = $1 and id = $2 for update', [nightId]);
    const { packet, digest } = await this.packets.one(nightId);
    const [latest] = await this.issueRows([nightId]);
    if (latest?.contentDigest === digest) return issueView(latest);
    const cues = packet.cues.map(({ number, cueKey, placementId, commitmentId, copyVersion }) => ({ number, cueKey, placementId, commitmentId, copyVersion }));
    const [row] = await this.work.sql<IssueView>(
      `insert into packet_issue (department_id, id, night_id, number, cues, content_digest, issued_by_person_id) values ($1, $2, $3, $4, $5, $6, $7)
       returning id, number, recorded_at as "recordedAt"`,
      [newId(), nightId, (latest?.number ?? 0) + 1, JSON.stringify(cues), digest, this.work.scope.personId],
    );
    return row!;
  }

  /**
   * The packet to print: of an issue, or as it stands.
   *
   * @throws Refused `packet-out-of-date` when the issue asked for no longer says what the packet says
   */
  async toPrint(nightId: string, number: number | undefined): Promise<Composed & { issueNumber: number | null }> {
    const composed = await this.packets.one(nightId);
    const rows = await this.issueRows([nightId]);
    if (number === undefined) return { ...composed, issueNumber: rows.find((row) => row.contentDigest === composed.digest)?.number ?? null };
    const asked = rows.find((row) => row.number === number) ?? refuse('not-found');
    if (asked.contentDigest !== composed.digest) refuse('packet-out-of-date', { number });
    return { ...composed, issueNumber: number };
  }

  /** How the paper of several nights stands, in a fixed number of statements. */
  async paperOf(nightIds: readonly string[]): Promise<Map<string, PaperState>> {
    const composed = await this.packets.compose(nightIds);
    const latest = new Map((await this.issueRows(nightIds)).toReversed().map((row) => [row.nightId, row]));
    return new Map(
      composed.map(({ night, packet, digest }) => {
        const issued = latest.get(night.nightId);
        return [
          night.nightId,
          {
            packetIssued: issued?.number ?? null,
            packetOutOfDate: issued !== undefined && issued.contentDigest !== digest,
            readiness: { ready: isReady(packet), missing: packet.readiness.filter((line) => line.grade === 'mustFix').map((line) => line.sentence) },
            placementCount: night.games.reduce((sum, game) => sum + game.placements.length, 0),
          },
        ];
      }),
    );
  }

  private async issueRows(nightIds: readonly string[]): Promise<IssueRow[]> {
    return this.work.sql<IssueRow>(ISSUES, [nightIds]);
  }
}

function issueView({ id, number, recordedAt }: IssueRow): IssueView {
  return { id, number, recordedAt };
}
