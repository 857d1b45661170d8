export type { JournalBatchView as JournalBatch, JournalPreviewView as JournalPreview } from '../../server/billing/journal/journal-batch.dto.ts';
export type { JournalLayoutView as LayoutOfSeller } from '../../server/billing/journal/journal-layout.dto.ts';
