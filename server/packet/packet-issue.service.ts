import { Inject, Injectable } from '@nestjs/common';
import { changeSentence, changeSetOf } from '../domain/packet/change-set.ts';
import { isReady } from '../domain/packet/readiness.ts';
import { refuse } from '../domain/refusals.ts';
import { NightLocks } from '../planning/locks/night-locks.service.ts';
import { UnitOfWork } from '../platform/database/unit-of-work.ts';
import type { Listed } from '../platform/http/lists.ts';
import { IssueShelf } from './issue-shelf.service.ts';
import type { IssueReason, IssueWithPages } from './issue-shelf.service.ts';
import { issueView } from './packet.dto.ts';
import type { IssueView, NextIssueView, PacketView } from './packet.dto.ts';
import { PacketBinder } from './packet-binder.service.ts';
import type { FormerIssue } from './packet-binder.service.ts';
import { contentOf, namedIn } from './packet-content.ts';
import { PacketService } from './packet.service.ts';
import type { Composed } from './packet.service.ts';

const TRIES = 4;

interface Seen extends Composed {
  /** latest first */
  issues: IssueWithPages[];
  former: FormerIssue | null;
  isCurrent: boolean;
  reason: IssueReason;
}

/** The packet of a night gets its numbers and its pages here, and then stays as it was issued. */
@Injectable()
export class PacketIssueService {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(PacketService) private readonly packets: PacketService,
    @Inject(IssueShelf) private readonly shelf: IssueShelf,
    @Inject(PacketBinder) private readonly binder: PacketBinder,
    @Inject(NightLocks) private readonly locks: NightLocks,
  ) {}

  /** Inside a unit of work. */
  async one(nightId: string): Promise<PacketView> {
    const { packet, digest } = await this.packets.one(nightId);
    const [latest] = await this.shelf.all(nightId);
    return {
      ...packet,
      isReady: isReady(packet),
      contentDigest: digest,
      issue: latest ? issueView(latest, [latest], digest) : null,
      isOutOfDate: latest !== undefined && (latest.contentDigest !== digest || latest.isSealed),
    };
  }

  /** Inside a unit of work. */
  async list(nightId: string): Promise<Listed<IssueView>> {
    const { digest } = await this.packets.one(nightId);
    const issues = await this.shelf.all(nightId);
    return { data: issues.map((issue) => issueView(issue, issues, digest)), total: issues.length };
  }

  /** What issuing would do now. Outside a unit of work, because it typesets. */
  async next(nightId: string): Promise<NextIssueView> {
    const seen = await this.work.run(() => this.look(nightId));
    const { former, isCurrent, reason } = seen;
    const number = (seen.issues[0]?.number ?? 0) + 1;
    const empty = { swap: [], add: [], takeOut: [] };
    if (isCurrent) return { number: number - 1, reason: 'none', pageCount: seen.issues[0]!.pages?.pages.length ?? 0, changes: empty, sentence: 'Nothing changed since it was issued.' };
    const binder = await this.binder.bind(contentOf(seen.packet), former, number);
    const changes = former === null ? null : changeSetOf(former.binder.pages, binder.pages);
    const sentence = changes === null ? `All ${binder.pages.length} pages.` : changeSentence(changes);
    return { number, reason, pageCount: binder.pages.length, changes, sentence };
  }

  /**
   * Gives the packet as it stands the next number; where nothing changed since the latest issue, that one
   * stays. Two at once get the same one. Outside a unit of work: read, close, typeset, open, store.
   *
   * @throws Refused `busy` when the night changes faster than its pages are set
   */
  async issue(nightId: string): Promise<IssueView> {
    for (let attempt = 1; attempt <= TRIES; attempt += 1) {
      const seen = await this.work.run(() => this.look(nightId));
      if (seen.isCurrent) return issueView(seen.issues[0]!, seen.issues, seen.digest);
      const content = contentOf(seen.packet);
      const number = (seen.issues[0]?.number ?? 0) + 1;
      const pages = await this.binder.bind(content, seen.former, number);
      const stored = await this.work.run(async () => {
        await this.locks.hold(nightId);
        const now = await this.look(nightId);
        const isSame = now.digest === seen.digest && now.issues.length === seen.issues.length && now.reason === seen.reason;
        if (!isSame) return null;
        await this.locks.lockIssued(nightId);
        const cues = now.packet.cues.map(({ number: place, cueKey, placementId, commitmentId, copyVersion }) => ({ number: place, cueKey, placementId, commitmentId, copyVersion }));
        await this.shelf.add({ nightId, number, contentDigest: now.digest, reason: now.reason, pages, content, cues, namedPlayerIds: namedIn(now.night) });
        const issues = await this.shelf.all(nightId);
        return issueView(issues[0]!, issues, now.digest);
      });
      if (stored !== null) return stored;
    }
    return refuse('busy');
  }

  /** Inside a unit of work. */
  private async look(nightId: string): Promise<Seen> {
    const composed = await this.packets.one(nightId);
    const issues = await this.shelf.all(nightId);
    const [latest] = issues;
    const former = latest?.pages ? { binder: latest.pages, content: await this.shelf.contentOf(latest.id) } : null;
    const isCurrent = latest !== undefined && latest.contentDigest === composed.digest && !latest.isSealed;
    return { ...composed, issues, former, isCurrent, reason: latest === undefined ? 'first' : latest.isSealed ? 'choice' : 'change' };
  }
}
