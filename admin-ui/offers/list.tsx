import { Alert, Box } from '@mui/material';
import { useGetList } from 'react-admin';
import { Go } from '../fields/go.tsx';
import { choiceFilter, findFilter, pickFilter } from '../lists/filters.tsx';
import { ListPage } from '../lists/list-page.tsx';
import { OFFER_STATES } from '../words/choices.ts';
import { count } from '../words/count.ts';
import { OfferStateTag } from './state-tag.tsx';
import type { Offer } from './types.ts';
import { askedText, lapsesText, offerPriceText } from './words.ts';

/** What holds places that nobody else can be promised, and will let them go within a week. */
function LapsingSoon() {
  const { data = [] } = useGetList<Offer>('offers', { filter: { lapsesSoon: true }, pagination: { page: 1, perPage: 25 }, sort: { field: 'lapsesOn', order: 'ASC' } });
  const holding = data.filter((offer) => offer.holdsNow);
  if (holding.length === 0) return null;
  return (
    <Alert severity="warning" icon={false} sx={{ mb: 2 }}>
      {count(holding.length, 'offer holds', 'offers hold')} places and {holding.length === 1 ? 'lapses' : 'lapse'} within a week:
      <Box component="ul" sx={{ m: 0, pl: 2.5 }}>
        {holding.map((offer) => (
          <li key={offer.id}><Go resource="offers" id={offer.id}>{offer.sponsorName}</Go>, {offer.title}: {lapsesText(offer)}</li>
        ))}
      </Box>
    </Alert>
  );
}

export const AskedLines = ({ offer }: { offer: Offer }) => {
  const lines = [...offer.readLines.map(askedText), ...offer.benefitLines.map((line) => `${line.quantity} × ${line.name}`)];
  return lines.length === 0 ? <>Nothing yet</> : <>{lines.map((line) => <Box key={line} component="span" sx={{ display: 'block' }}>{line}</Box>)}</>;
};

export const OfferList = () => (
  <ListPage<Offer>
    title="Offers"
    addLabel="New offer"
    lead={<LapsingSoon />}
    sort={{ field: 'attention', order: 'ASC' }}
    filters={[findFilter(), choiceFilter('state', 'State', OFFER_STATES), pickFilter('seasonId', 'seasons', 'Season')]}
    empty="An offer is what you put to a sponsor: reads and other benefits at a price, until a day. An open offer holds its places in the season until that day. Signed, it becomes a contract."
    columns={[
      { label: 'Offer', sortBy: 'title', show: (offer) => <Go resource="offers" id={offer.id}>{offer.title}</Go> },
      { label: 'Sponsor', sortBy: 'sponsorName', show: (offer) => offer.sponsorName },
      { label: 'State', sortBy: 'state', show: (offer) => <OfferStateTag state={offer.state} /> },
      { label: 'Holds until', sortBy: 'lapsesOn', show: (offer) => (offer.state === 'open' || offer.state === 'lapsed' || offer.state === 'draft' ? lapsesText(offer) : '–') },
      { label: 'What is asked', show: (offer) => <AskedLines offer={offer} /> },
      { label: 'Price', sortBy: 'priceCents', numeric: true, show: offerPriceText },
    ]}
  />
);
