import { Box, Link } from '@mui/material';
import { Go } from '../fields/go.tsx';
import { Name } from '../fields/name.tsx';
import { Tag } from '../fields/tag.tsx';
import { dayText } from '../format/day.ts';
import { Rows } from '../lists/rows.tsx';
import { iMay } from '../session/rights.ts';
import { CONTACT_WAY_WORDS, wordFor } from '../words/choices.ts';
import { ContactButton } from './contact-button.tsx';
import { Reasons } from './reasons.tsx';
import type { CallView } from './types.ts';

/** A telephone number that a phone dials. */
export const Telephone = ({ number }: { number: string }) => (
  <Link href={`tel:${number.replace(/[^+\d]/g, '')}`} sx={{ display: 'inline-block', py: 0.25, whiteSpace: 'nowrap' }}>{number}</Link>
);

function Reach({ call }: { call: CallView }) {
  if (!call.contactName && !call.phone && !call.email) return <>–</>;
  return (
    <>
      {call.contactName && <Box>{call.contactName}</Box>}
      {call.phone && <Box><Telephone number={call.phone} /></Box>}
      {!call.phone && call.email && <Box sx={{ overflowWrap: 'anywhere' }}><Link href={`mailto:${call.email}`} sx={{ display: 'inline-block', py: 0.25 }}>{call.email}</Link></Box>}
    </>
  );
}

function LastWords({ call: { lastContact } }: { call: CallView }) {
  if (!lastContact) return <>Never spoken to yet</>;
  const { contactedOn, how, withWhom, what } = lastContact;
  return (
    <>
      <Box sx={{ overflowWrap: 'anywhere' }}>“{what.length > 140 ? `${what.slice(0, 139).trimEnd()}…` : what}”</Box>
      <Box sx={{ color: 'text.secondary' }}>{wordFor(CONTACT_WAY_WORDS, how)}{withWhom ? ` with ${withWhom}` : ''}, {dayText(contactedOn)}</Box>
    </>
  );
}

/** Sponsors to call, in the order in which to call them. */
export function CallRows({ label, calls, today }: { label: string; calls: CallView[]; today: string }) {
  return (
    <Rows<CallView>
      label={label}
      rows={calls}
      keyOf={(call) => call.sponsorId}
      columns={[
        {
          label: 'Sponsor',
          show: (call) => (
            <>
              <Go resource="sponsors" id={call.sponsorId}><Name name={call.sponsorName} sayAs={call.sayAs} /></Go>
              {call.lostOn && <Box sx={{ fontWeight: 400 }}><Tag mood="bad">Lost {dayText(call.lostOn)}</Tag></Box>}
            </>
          ),
        },
        { label: 'Why', show: (call) => <Reasons call={call} today={today} /> },
        { label: 'Speak to', show: (call) => <Reach call={call} /> },
        { label: 'Last words', show: (call) => <LastWords call={call} /> },
        { label: 'Whose call', show: (call) => call.callerName ?? 'Nobody’s yet' },
        ...(iMay('calls', 'edit') ? [{ label: 'Then', show: (call: CallView) => <ContactButton sponsor={{ id: call.sponsorId, name: call.sponsorName, contactName: call.contactName }} /> }] : []),
      ]}
    />
  );
}
