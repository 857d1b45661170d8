import { Button } from '@mui/material';
import { useGetList } from 'react-admin';
import { Link } from 'react-router';
import { Go } from '../fields/go.tsx';
import { EmptyList } from '../lists/empty-list.tsx';
import { Rows } from '../lists/rows.tsx';
import { iMay } from '../session/rights.ts';
import { Section } from '../show/section.tsx';
import { OfferStateTag } from './state-tag.tsx';
import type { Offer } from './types.ts';
import { lapsesText, offerPriceText } from './words.ts';

const NewOffer = ({ sponsorId }: { sponsorId: string }) =>
  iMay('offers', 'create') ? <Button component={Link} to={`/offers/create?source=${encodeURIComponent(JSON.stringify({ sponsorId }))}`} variant="outlined">New offer</Button> : null;

export function OffersOfSponsor({ sponsorId }: { sponsorId: string }) {
  const { data = [], isPending } = useGetList<Offer>('offers', { filter: { sponsorId }, pagination: { page: 1, perPage: 100 }, sort: { field: 'attention', order: 'ASC' } }, { enabled: iMay('offers', 'list') });
  if (isPending) return null;
  return (
    <Section title="Offers" actions={<NewOffer sponsorId={sponsorId} />}>
      {data.length === 0 ? (
        <EmptyList>Nothing was offered to this sponsor yet.</EmptyList>
      ) : (
        <Rows<Offer>
          label="Offers to this sponsor"
          rows={data}
          columns={[
            { label: 'Offer', show: (offer) => <Go resource="offers" id={offer.id}>{offer.title}</Go> },
            { label: 'State', show: (offer) => <OfferStateTag state={offer.state} /> },
            { label: 'Holds until', show: (offer) => (['open', 'lapsed', 'draft'].includes(offer.state) ? lapsesText(offer) : '–') },
            { label: 'Price', numeric: true, show: offerPriceText },
          ]}
        />
      )}
    </Section>
  );
}
