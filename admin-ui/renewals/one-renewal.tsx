import { Box, Button, Typography } from '@mui/material';
import type { ReactNode } from 'react';
import { Link } from 'react-router';
import { Go } from '../fields/go.tsx';
import { Tag } from '../fields/tag.tsx';
import { dayText } from '../format/day.ts';
import { moneyText } from '../format/money.ts';
import { iMay } from '../session/rights.ts';
import { Section } from '../show/section.tsx';
import type { RenewalRow } from './types.ts';
import { FOLLOW_MOODS, givenText, paidText } from './words.ts';

/** A sponsor of last term: how it went, whom to talk to, what follows, and what to offer. */
export function OneRenewal({ row }: { row: RenewalRow }) {
  const { suggestion, follows } = row;
  const mayOffer = iMay('offers', 'create') && follows.state !== 'signed' && follows.state !== 'carriedOn' && follows.state !== 'offered';
  return (
    <Section title={row.sponsorName} actions={mayOffer && <Button component={Link} to="/offers/create" state={{ record: row.offer }} variant="contained">Make an offer</Button>}>
      <Box sx={{ display: 'grid', gridTemplateColumns: { xs: '1fr', md: '1fr 1fr 1fr' }, columnGap: 3, rowGap: 1.5 }}>
        <Part title="Last term">
          <Go resource="contracts" id={row.contractId}>{[row.number, row.title].filter(Boolean).join(', ')}</Go>
          <Line><strong className="tabular">{moneyText(row.priceCents)}</strong>{row.isInKind ? ' in goods' : ''}</Line>
          <Line>{givenText(row)}</Line>
          <Line>{row.paid === 'overdue' ? <Tag mood="bad">{paidText(row)}</Tag> : paidText(row)}</Line>
        </Part>
        <Part title="Whom to talk to">
          <Go to={`/sponsors/${row.sponsorId}/show`}>{row.contactName ?? row.sponsorName}</Go>
          <Line>{row.lastContactOn ? `Last contact ${dayText(row.lastContactOn)}` : 'No contact written down'}</Line>
          <Line>{row.nextStep ? `Next: ${row.nextStep}${row.nextStepOn ? `, by ${dayText(row.nextStepOn)}` : ''}` : 'No next step agreed'}</Line>
          <Line>{row.callerName ? `${row.callerName} calls` : 'Nobody’s call yet'}</Line>
        </Part>
        <Part title="What follows">
          <WhatFollows row={row} />
        </Part>
      </Box>
      <Typography component="h3" sx={{ mt: 2, fontWeight: 600 }}>What to offer: <span className="tabular">{moneyText(suggestion.worthCents)}</span></Typography>
      <Typography sx={{ maxWidth: '90ch' }}>{suggestion.words}</Typography>
    </Section>
  );
}

function WhatFollows({ row: { follows } }: { row: RenewalRow }) {
  return (
    <>
      <Tag mood={FOLLOW_MOODS[follows.state]}>{follows.words}</Tag>
      {follows.contractId && <Line><Go resource="contracts" id={follows.contractId}>See the contract</Go></Line>}
      {follows.offerId && iMay('offers', 'show') && <Line><Go resource="offers" id={follows.offerId}>See the offer</Go></Line>}
    </>
  );
}

const Part = ({ title, children }: { title: string; children: ReactNode }) => (
  <Box sx={{ minWidth: 0, overflowWrap: 'anywhere' }}>
    <Typography component="h3" sx={{ color: 'text.secondary' }}>{title}</Typography>
    {children}
  </Box>
);

const Line = ({ children }: { children: ReactNode }) => <Typography sx={{ mt: 0.25 }}>{children}</Typography>;
