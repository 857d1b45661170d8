import { LayoutEdit } from './layout-edit.tsx';
import { LayoutList } from './layout-list.tsx';
import { JournalBatchList } from './list.tsx';
import { NextBatch } from './next-batch.tsx';
import { JournalBatchShow } from './show.tsx';

export const journalBatches = { name: 'journal-batches', list: JournalBatchList, create: NextBatch, show: JournalBatchShow, recordRepresentation: 'number' };
export const journalLayouts = { name: 'journal-layouts', list: LayoutList, edit: LayoutEdit, recordRepresentation: 'sellerName' };
