import { Inject, Injectable } from '@nestjs/common';
import { FIRST_LAYOUT, assertLayout } from '../../domain/billing/journal-layout.ts';
import type { JournalLayout } from '../../domain/billing/journal-layout.ts';
import { refuse } from '../../domain/refusals.ts';
import { isId } from '../../platform/database/ids.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { Seller } from '../../sponsorship/seller.entity.ts';
import type { JournalLayoutDto, JournalLayoutView } from './journal-layout.dto.ts';
import { JournalLayoutRow } from './journal-layout.entity.ts';

/** One layout for each seller of record that keeps its books here. */
@Injectable()
export class JournalLayouts {
  constructor(@Inject(UnitOfWork) private readonly work: UnitOfWork) {}

  async list(): Promise<JournalLayoutView[]> {
    const sellers = await this.work.find(Seller, { keepsBooksHere: true }, { order: { name: 'ASC' } });
    const rows = new Map((await this.work.find(JournalLayoutRow)).map((row) => [row.sellerId, row]));
    return sellers.map((seller) => viewOf(seller, rows.get(seller.id)));
  }

  /** @throws Refused `not-found`, also for a seller whose books are kept elsewhere */
  async one(sellerId: string): Promise<JournalLayoutView> {
    const seller = isId(sellerId) ? await this.work.first(Seller, { id: sellerId, keepsBooksHere: true }) : null;
    if (!seller) return refuse('not-found');
    return viewOf(seller, (await this.work.first(JournalLayoutRow, { sellerId })) ?? undefined);
  }

  /** @throws Refused as `one`, `stale-version`, and as `assertLayout` */
  async put(sellerId: string, version: number, form: JournalLayoutDto): Promise<JournalLayoutView> {
    const before = await this.one(sellerId);
    if (before.version !== version) refuse('stale-version');
    const layout = layoutOf(form);
    assertLayout(layout);
    const { name, columns, codeParts, ...options } = layout;
    const fields = { name, columns, codeStrings: codeParts, options };
    const row = await this.work.first(JournalLayoutRow, { sellerId });
    if (row) await this.work.update(JournalLayoutRow, row.id, version, fields as Partial<JournalLayoutRow>);
    else await this.work.insert(JournalLayoutRow, { sellerId, ...fields } as Partial<JournalLayoutRow>);
    return this.one(sellerId);
  }
}

function layoutOf(form: JournalLayoutDto): JournalLayout {
  return {
    ...form,
    separator: form.separator ?? '',
    columns: form.columns.map(({ field, heading, text, part }) => ({ field, heading: heading ?? '', text: text ?? null, part: part ?? null })),
    codeParts: form.codeParts.map(({ name, kind, otherwise, values }) => ({ name, kind, otherwise: otherwise ?? null, values: (values ?? []).map(({ key, text }) => ({ key, text })) })),
  };
}

function viewOf(seller: Seller, row: JournalLayoutRow | undefined): JournalLayoutView {
  const layout: JournalLayout = row ? { name: row.name, columns: row.columns, codeParts: row.codeStrings, ...row.options } : FIRST_LAYOUT;
  return { id: seller.id, sellerId: seller.id, sellerName: seller.name, ...layout, version: row?.version ?? 0 };
}
