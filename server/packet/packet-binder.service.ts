import { Inject, Injectable } from '@nestjs/common';
import { binderOf, firstPages, pagesOfSheets, sheetsFor } from '../domain/packet/page-plan.ts';
import type { Binder, Page, Sheet } from '../domain/packet/page-plan.ts';
import { whatChanged } from '../domain/packet/page-words.ts';
import type { Block } from '../domain/packet/sections.ts';
import type { PlannedPage } from '../platform/typesetting/packet-sheet.ts';
import { Typesetter } from '../platform/typesetting/typesetter.ts';
import { blocksOf, blocksToPlace, canonical, pageDigest } from './packet-content.ts';
import type { PacketContent } from './packet-content.ts';

/** The issue before, as far as the next one depends on it. */
export interface FormerIssue {
  readonly binder: Binder;
  /** Null once its words were erased; then nobody can say what changed on a page. */
  readonly content: PacketContent | null;
}

/** Finds out on which page each block of an issue stands. Typesets, so never inside a unit of work. */
@Injectable()
export class PacketBinder {
  constructor(@Inject(Typesetter) private readonly typesetter: Typesetter) {}

  async bind(content: PacketContent, former: FormerIssue | null, number: number): Promise<Binder> {
    const pages = await this.pagesOf(content, former?.binder ?? null);
    const binder = binderOf(pages, former?.binder ?? null, number, pageDigest(content));
    return former === null ? binder : withWords(binder, content, former, number);
  }

  private async pagesOf(content: PacketContent, former: Binder | null): Promise<Page[]> {
    const blocks = blocksToPlace(content);
    const sheets = former === null ? null : sheetsFor(blocks, former.pages);
    const { marks, pageCount } = await this.typesetter.plan({
      ...content, versionText: 'Version 1', pages: sheets?.map(forced) ?? null, pageCount: former?.of ?? null, only: null, cover: null,
    });
    return sheets === null ? firstPages(blocks, marks, pageCount) : pagesOfSheets(sheets, blocks, marks);
  }
}

/** As long a head as it can have, so that no page is shorter when it is printed. */
const forced = ({ tab, keys }: Sheet, place: number): PlannedPage => ({ label: `${place + 1}`, tab, keys, versionText: 'Version 1', digestText: '0'.repeat(12) });

/** Writes beside each page of this issue what is different on it. */
function withWords(binder: Binder, content: PacketContent, former: FormerIssue, number: number): Binder {
  const now = new Map(blocksOf(content).map((block) => [block.key, block]));
  const before = former.content === null ? null : new Map(blocksOf(former.content).map((block) => [block.key, block]));
  const on = (keys: readonly string[], blocks: ReadonlyMap<string, Block>): Block[] => keys.flatMap((key) => blocks.get(key) ?? []);
  const isSame = (block: Block): boolean | null => {
    const was = before?.get(block.key);
    return was === undefined ? null : canonical(was) === canonical(block);
  };
  return {
    ...binder,
    pages: binder.pages.map((page) => {
      if (page.version !== number) return page;
      const was = former.binder.pages.find((one) => one.label === page.label);
      return { ...page, what: whatChanged(on(page.keys, now), before === null ? null : on(was?.keys ?? [], before), isSame) };
    }),
  };
}
