import { Box } from '@mui/material';
import { useServer } from '../api/use-server.ts';
import { dayText } from '../format/day.ts';
import { EmptyList } from '../lists/empty-list.tsx';
import { Rows } from '../lists/rows.tsx';
import { iMay } from '../session/rights.ts';
import { Reading } from '../show/reading.tsx';
import { Section } from '../show/section.tsx';
import type { Sponsor } from '../sponsors/types.ts';
import { CONTACT_WAY_WORDS, wordFor } from '../words/choices.ts';
import { ContactButton } from './contact-button.tsx';
import type { SponsorContact } from './types.ts';

const nextOf = ({ nextStep, nextStepOn }: SponsorContact): string =>
  nextStep ? `${nextStep}${nextStepOn ? `, ${dayText(nextStepOn)}` : ''}` : nextStepOn ? dayText(nextStepOn) : '–';

/** What was said to a sponsor, the latest first. */
export function ContactsOfSponsor({ sponsor }: { sponsor: Sponsor }) {
  const answer = useServer<{ data: SponsorContact[] }>(`/sponsors/${sponsor.id}/contacts`);
  return (
    <Section title="Calls and visits" actions={iMay('calls', 'edit') && <ContactButton sponsor={sponsor} />}>
      <Reading of={answer}>
        {({ data }) =>
          data.length === 0 ? (
            <EmptyList>Nothing is written down yet. Write down each call and visit: whoever calls next reads here what was said last.</EmptyList>
          ) : (
            <Rows<SponsorContact>
              label="Calls and visits"
              rows={data}
              columns={[
                { label: 'When', show: (one) => <Box component="span" sx={{ whiteSpace: 'nowrap' }}>{dayText(one.contactedOn)}</Box> },
                { label: 'How', show: (one) => `${wordFor(CONTACT_WAY_WORDS, one.how)}${one.withWhom ? ` with ${one.withWhom}` : ''}` },
                { label: 'What was said', show: (one) => <Box sx={{ whiteSpace: 'pre-line', overflowWrap: 'anywhere' }}>{one.what}</Box> },
                { label: 'Next step', show: nextOf },
                { label: 'By', show: (one) => one.contactedByName ?? '–' },
              ]}
            />
          )
        }
      </Reading>
    </Section>
  );
}
