import { Button } from '@mui/material';
import { Link } from 'react-router';
import { Name } from '../fields/name.tsx';
import { dayText } from '../format/day.ts';
import { SendButton } from '../letters/send-button.tsx';
import { iMay } from '../session/rights.ts';
import { Facts } from '../show/facts.tsx';
import { Section } from '../show/section.tsx';
import { ShowPage } from '../show/show-page.tsx';
import { SPONSOR_STATUS_WORDS, wordFor } from '../words/choices.ts';
import { ContactsOfSponsor } from '../calls/contacts-of-sponsor.tsx';
import { Telephone } from '../calls/call-rows.tsx';
import { LostButton, WonBackButton } from '../calls/lost-button.tsx';
import { Tag } from '../fields/tag.tsx';
import { ContractsOfSponsor } from '../contracts/contracts-of-sponsor.tsx';
import { CopiesOfSponsor } from '../copies/copies-of-sponsor.tsx';
import { LinksOfSponsor } from '../links/links-of-sponsor.tsx';
import { OffersOfSponsor } from '../offers/offers-of-sponsor.tsx';
import { SlogansOfSponsor } from '../slogans/slogans-of-sponsor.tsx';
import { AccountOfSponsor } from './account-of-sponsor.tsx';
import type { Sponsor } from './types.ts';

const NewContract = ({ sponsor }: { sponsor: Sponsor }) =>
  iMay('contracts', 'create') ? (
    <Button component={Link} to={`/contracts/create?source=${encodeURIComponent(JSON.stringify({ sponsorId: sponsor.id }))}`} variant="contained">
      New contract
    </Button>
  ) : null;

const Actions = ({ sponsor }: { sponsor: Sponsor }) => (
  <>
    <NewContract sponsor={sponsor} />
    {iMay('calls', 'edit') && (sponsor.lostOn ? <WonBackButton sponsor={sponsor} /> : <LostButton sponsor={sponsor} />)}
    {iMay('invoices', 'list') && <SendButton label="Send the account…" which={{ kind: 'statement', aboutId: sponsor.id }} />}
  </>
);

export const SponsorShow = () => (
  <ShowPage<Sponsor> title={(sponsor) => sponsor.name} actions={(sponsor) => <Actions sponsor={sponsor} />}>
    {(sponsor) => (
      <>
        <Section title="Sponsor">
          <Facts
            facts={[
              ['Name', <Name key="name" name={sponsor.name} sayAs={sponsor.sayAs} />],
              ['Category', sponsor.categoryName],
              ['State', wordFor(SPONSOR_STATUS_WORDS, sponsor.status)],
              ['Contact', sponsor.contactName],
              ['E-mail', sponsor.email],
              ['Telephone', sponsor.phone && <Telephone key="phone" number={sponsor.phone} />],
              ['Address', sponsor.address],
              sponsor.lostOn !== null && ['Lost', <Tag key="lost" mood="bad">{`${dayText(sponsor.lostOn)}: ${sponsor.lostReason}`}</Tag>],
              ['Whose call', sponsor.callerName],
              ['Last contact', sponsor.lastContactOn && dayText(sponsor.lastContactOn)],
              ['Next step', sponsor.nextStep && `${sponsor.nextStep}${sponsor.nextStepOn ? `, ${dayText(sponsor.nextStepOn)}` : ''}`],
              ['Note', sponsor.note],
            ]}
          />
        </Section>
        {iMay('calls', 'list') && <ContactsOfSponsor sponsor={sponsor} />}
        {iMay('offers', 'list') && <OffersOfSponsor sponsorId={sponsor.id} />}
        <ContractsOfSponsor sponsorId={sponsor.id} />
        {iMay('aging', 'list') && <AccountOfSponsor sponsor={sponsor} />}
        <CopiesOfSponsor sponsorId={sponsor.id} />
        <SlogansOfSponsor sponsorId={sponsor.id} />
        <LinksOfSponsor sponsorId={sponsor.id} sponsorName={sponsor.name} />
      </>
    )}
  </ShowPage>
);
