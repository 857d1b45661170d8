import { Alert, Button, Typography } from '@mui/material';
import { Link } from 'react-router';
import { Tag } from '../fields/tag.tsx';
import { moneyText } from '../format/money.ts';
import { Rows } from '../lists/rows.tsx';
import { iMay } from '../session/rights.ts';
import { Facts } from '../show/facts.tsx';
import { Section } from '../show/section.tsx';
import { ShowPage } from '../show/show-page.tsx';
import { count, numberText } from '../words/count.ts';
import { eachInWords, nameOfLine, priceInWords, quantityInWords } from './line-words.ts';
import type { Package, PackageLine } from './types.ts';

const OfferIt = ({ one }: { one: Package }) =>
  one.isOffered && iMay('offers', 'create') ? (
    <Button component={Link} to={`/offers/create?source=${encodeURIComponent(JSON.stringify({ packageId: one.id, seasonId: one.seasonId }))}`} variant="contained">Offer it to a sponsor</Button>
  ) : null;

function Lines({ one }: { one: Package }) {
  const of = new Map(one.values.map((value) => [value.lineId, value]));
  return (
    <Rows<PackageLine>
      label="Lines of the package"
      rows={one.lines}
      columns={[
        { label: 'What', show: nameOfLine },
        { label: 'How many', show: (line) => `${quantityInWords(line)}${line.mostPerGame ? `, at most ${line.mostPerGame} in one game` : ''}` },
        { label: 'At the rate card', numeric: true, show: (line) => (line.rateCents === 0 ? <Tag mood="care">No price</Tag> : `${numberText(line.countAtRate)} × ${moneyText(line.rateCents)} = ${moneyText(line.worthCents)}`) },
        { label: 'In this package', numeric: true, show: (line) => moneyText(of.get(line.id)?.valueCents) },
        { label: 'One is credited with', numeric: true, show: (line) => (of.has(line.id) ? eachInWords(of.get(line.id)!) : '–') },
      ]}
    />
  );
}

export const PackageShow = () => (
  <ShowPage<Package> title={(one) => one.name} actions={(one) => <OfferIt one={one} />}>
    {(one) => (
      <>
        <Section title="Package">
          <Typography sx={{ fontSize: '1.25rem', fontWeight: 700, mb: 1.5 }}>{priceInWords(one)}</Typography>
          <Facts facts={[['Season', one.seasonName], ['Offered', one.isOffered ? <Tag key="offered" mood="good">Offered now</Tag> : 'Not offered'], ['Note', one.note]]} />
        </Section>
        <Section title="What is in it" lead={`Lines for each game are counted over ${count(one.gamesCounted, 'announced home game')} of the season, as it stands today. In an offer they go by the games it covers.`}>
          {one.valuesTrouble && <Alert severity="warning" icon={false} sx={{ mb: 1.5 }}>{one.valuesTrouble.sentence}</Alert>}
          <Lines one={one} />
        </Section>
      </>
    )}
  </ShowPage>
);
