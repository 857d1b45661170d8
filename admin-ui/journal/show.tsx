import { Go } from '../fields/go.tsx';
import { dayText } from '../format/day.ts';
import { instantText } from '../format/instant.ts';
import { moneyText } from '../format/money.ts';
import { Facts } from '../show/facts.tsx';
import { Figures } from '../show/figures.tsx';
import { Section } from '../show/section.tsx';
import { ShowPage } from '../show/show-page.tsx';
import { numberText } from '../words/count.ts';
import { DownloadButton } from './download-button.tsx';
import type { JournalBatch } from './types.ts';

export const JournalBatchShow = () => (
  <ShowPage<JournalBatch> title={(batch) => `Batch ${batch.number}`} canEdit={false} actions={(batch) => <DownloadButton batch={batch} />}>
    {(batch) => (
      <Section title="The batch" lead="Its file stays as it was made, whatever is changed in the layout, the accounts or the names.">
        <Figures figures={[{ label: 'Entries', value: numberText(batch.entryCount) }, { label: 'Debits', value: moneyText(batch.debitCents) }, { label: 'Credits', value: moneyText(batch.debitCents) }]} />
        <Facts
          facts={[
            ['Seller', <Go key="seller" resource="sellers" id={batch.sellerId}>{batch.sellerName}</Go>],
            ['Booked through', dayText(batch.throughOn)],
            ['Made', [instantText(batch.recordedAt), batch.madeByName].filter(Boolean).join(', by ')],
            ['Fingerprint (SHA-256)', batch.sha256.replace(/(.{8})/g, '$1 ').trim()],
          ]}
        />
      </Section>
    )}
  </ShowPage>
);
