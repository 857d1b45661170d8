import { Facts } from '../show/facts.tsx';
import { Section } from '../show/section.tsx';
import { ShowPage } from '../show/show-page.tsx';
import { count } from '../words/count.ts';
import type { Seller } from './types.ts';

export const SellerShow = () => (
  <ShowPage<Seller> title={(seller) => seller.name}>
    {(seller) => (
      <Section title="Seller of record" lead="Local rules and the business office decide about tax and terms.">
        <Facts
          facts={[
            ['Name', seller.name],
            ['Invoice numbers begin', seller.numberPrefix],
            ['Address', seller.address],
            ['Where to pay', seller.remitTo],
            ['Tax identity', seller.taxIdentity],
            ['Sales tax', `${seller.taxBasisPoints / 100}%`],
            ['Terms', count(seller.termsDays, 'day')],
            ['Questions to', [seller.contactName, seller.contactEmail, seller.contactPhone].filter(Boolean).join(', ')],
            ['Books', seller.keepsBooksHere ? 'Kept here' : 'Kept elsewhere; only the reads are kept here'],
          ]}
        />
      </Section>
    )}
  </ShowPage>
);
