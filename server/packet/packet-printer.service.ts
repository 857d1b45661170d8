import { Inject, Injectable } from '@nestjs/common';
import { mayUse } from '../domain/access/rights.ts';
import type { Role } from '../domain/access/rights.ts';
import type { Day } from '../domain/day.ts';
import { changeSetOf, printedOf } from '../domain/packet/change-set.ts';
import type { Packet } from '../domain/packet/packet.ts';
import { pagesToSet } from '../domain/packet/page-plan.ts';
import type { Binder, BinderPage } from '../domain/packet/page-plan.ts';
import { refuse } from '../domain/refusals.ts';
import { UnitOfWork } from '../platform/database/unit-of-work.ts';
import type { ChangeCover, PacketSheet, PlannedPage } from '../platform/typesetting/packet-sheet.ts';
import { Typesetter } from '../platform/typesetting/typesetter.ts';
import { IssueShelf } from './issue-shelf.service.ts';
import type { IssueReason, IssueWithPages } from './issue-shelf.service.ts';
import { contentOf } from './packet-content.ts';
import type { PacketContent } from './packet-content.ts';
import { PacketService } from './packet.service.ts';
import type { Composed } from './packet.service.ts';

const SHORTENED_DIGEST = 12;

export interface PrintedPacket {
  pdf: Buffer;
  fileName: string;
  /** the issue that was printed; null for a draft */
  number: number | null;
  pageCount: number;
}

interface ToPrint {
  sheet: PacketSheet;
  number: number | null;
  heldOn: Day;
  venueName: string;
}

const REASONS: Readonly<Record<IssueReason, string | null>> = {
  first: null,
  change: null,
  choice: 'A family chose that a name is no longer used. Take the old pages off the table and destroy them.',
};

/** Packets on paper: short units of work to read, the typesetting outside of them. */
@Injectable()
export class PacketPrinter {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(PacketService) private readonly packets: PacketService,
    @Inject(IssueShelf) private readonly shelf: IssueShelf,
    @Inject(Typesetter) private readonly typesetter: Typesetter,
  ) {}

  /**
   * The packet of a night: the issue asked for as on its day, or else the packet as it stands.
   *
   * @throws Refused `packet-sealed`, `packet-erased`, `packet-out-of-date` for an issue from before packets were frozen
   */
  async print(nightId: string, number: number | undefined, roles: readonly Role[]): Promise<PrintedPacket> {
    return this.set('packet', await this.work.run(() => this.toPrint(nightId, number, roles)));
  }

  /** The packet as it stands, marked as a draft even where the latest issue says the same. */
  async printDraft(nightId: string): Promise<PrintedPacket> {
    return this.set('packet', await this.work.run(async () => draftOf(await this.packets.one(nightId))));
  }

  /** The pages that make the issue before into this one, behind a cover that says which to swap, add and take out. */
  async printChangeSet(nightId: string, number: number | undefined, roles: readonly Role[]): Promise<PrintedPacket> {
    return this.set('change-set', await this.work.run(() => this.changesToPrint(nightId, number, roles)));
  }

  private async set(kind: string, { sheet, number, heldOn, venueName }: ToPrint): Promise<PrintedPacket> {
    const { pdf, pageCount } = await this.typesetter.set('packet', sheet);
    const version = number === null ? '' : `-version-${number}`;
    return { pdf, number, pageCount, fileName: `${kind}-${heldOn}-${plain(venueName)}${version}.pdf` };
  }

  private async toPrint(nightId: string, number: number | undefined, roles: readonly Role[]): Promise<ToPrint> {
    const { night, packet, digest } = await this.packets.one(nightId);
    const issues = await this.shelf.all(nightId);
    const about = { heldOn: night.heldOn, venueName: night.venue.name };
    const asked = number === undefined ? issues.slice(0, 1).find((issue) => issue.contentDigest === digest && !issue.isSealed) : (issues.find((issue) => issue.number === number) ?? refuse('not-found'));
    if (asked === undefined) return draftOf({ night, packet });
    if (asked.pages === null) {
      if (asked.contentDigest !== digest) refuse('packet-out-of-date', { number: asked.number });
      return { ...about, number: asked.number, sheet: { ...flowing(packet), versionText: versionText(asked.number) } };
    }
    return { ...about, number: asked.number, sheet: sheetOf(asked.number, asked.pages, await this.wordsOf(asked, roles)) };
  }

  private async changesToPrint(nightId: string, number: number | undefined, roles: readonly Role[]): Promise<ToPrint> {
    const { night } = await this.packets.one(nightId);
    const issues = await this.shelf.all(nightId);
    const asked = issues.find((issue) => number === undefined || issue.number === number) ?? refuse('not-found');
    const before = issues.find((issue) => issue.number === asked.number - 1)?.pages ?? null;
    if (asked.pages === null || before === null) return refuse('change-set-unknown', { number: asked.number });
    const whole = sheetOf(asked.number, asked.pages, await this.wordsOf(asked, roles));
    const changes = changeSetOf(before.pages, asked.pages.pages);
    const cover = coverOf(asked, asked.pages.pages, before.pages);
    return { heldOn: night.heldOn, venueName: night.venue.name, number: asked.number, sheet: { ...whole, only: printedOf(changes, asked.pages.pages), cover } };
  }

  private async wordsOf(issue: IssueWithPages, roles: readonly Role[]): Promise<PacketContent> {
    if (issue.erasedAt !== null) refuse('packet-erased', { number: issue.number });
    if (issue.isSealed && !mayUse(roles, 'change students')) refuse('packet-sealed', { number: issue.number });
    return (await this.shelf.contentOf(issue.id)) ?? refuse('packet-erased', { number: issue.number });
  }
}

const flowing = (packet: Packet): PacketSheet => ({ ...contentOf(packet), versionText: null, pages: null, pageCount: null, only: null, cover: null });

function draftOf({ night, packet }: Pick<Composed, 'night' | 'packet'>): ToPrint {
  return { heldOn: night.heldOn, venueName: night.venue.name, number: null, sheet: flowing(packet) };
}

const versionText = (number: number): string => `Version ${number}`;

function sheetOf(number: number, binder: Binder, content: PacketContent): PacketSheet {
  const pages = pagesToSet(binder.pages).map((page): PlannedPage => ({
    label: page.label, tab: page.tab, keys: page.keys, versionText: versionText(page.version), digestText: page.digest.slice(0, SHORTENED_DIGEST),
  }));
  return { head: content.head, paper: content.paper, sections: content.sections, versionText: versionText(number), pages, pageCount: binder.of, only: null, cover: null };
}

function coverOf(issue: IssueWithPages, next: readonly BinderPage[], before: readonly BinderPage[]): ChangeCover {
  const { swap, add, takeOut } = changeSetOf(before, next);
  const line = (action: 'swap' | 'add' | 'takeOut', pages: readonly BinderPage[]) => (label: string) => {
    const page = pages.find((one) => one.label === label)!;
    return { action, label, tab: page.tab, what: page.what ?? '' };
  };
  return {
    title: 'Change set',
    sinceText: versionText(issue.number - 1),
    versionText: versionText(issue.number),
    reasonText: issue.reason === null ? null : REASONS[issue.reason],
    lines: [...swap.map(line('swap', next)), ...add.map(line('add', next)), ...takeOut.map(line('takeOut', before.map(({ what: _, ...page }) => page)))],
  };
}

/** `Alder Fieldhouse` as `alder-fieldhouse`. */
function plain(name: string): string {
  const words = name.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase().replace(/[^a-z0-9]+/g, '-');
  return words.replace(/^-+|-+$/g, '').slice(0, 60) || 'venue';
}
