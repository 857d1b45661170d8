import { useGetList } from 'react-admin';
import { only } from '../api/changes.ts';
import { dayText } from '../format/day.ts';
import { CommandButton } from '../forms/command-button.tsx';
import { WordsInput } from '../inputs/words-input.tsx';
import { EmptyList } from '../lists/empty-list.tsx';
import { Rows } from '../lists/rows.tsx';
import { iMay } from '../session/rights.ts';
import { Section } from '../show/section.tsx';
import type { Slogan } from './types.ts';

const LEAD = 'A slogan a sponsor has long used is no praise of its own (26 CFR 1.513-4(c)(2)(iv)). Registered here, its words pass the copy check in this sponsor’s copy.';

const RegisterButton = ({ sponsorId }: { sponsorId: string }) => (
  <CommandButton
    label="Register a slogan"
    title="Register a slogan"
    explains="Only one that the sponsor uses everywhere and has used before: a phrase made for this season is no established slogan."
    path="/slogans"
    body={(values) => ({ sponsorId, ...only(values, 'text', 'knownFrom') })}
    success="The slogan is registered."
  >
    <WordsInput source="text" label="Slogan" longest={160} required />
    <WordsInput source="knownFrom" label="Known from" longest={300} required helperText="The sign over the door, the letterhead; since when" />
  </CommandButton>
);

const TakeOutButton = ({ slogan }: { slogan: Slogan }) => (
  <CommandButton
    label="Take out"
    title={`Take out “${slogan.text}”?`}
    explains="Its words are checked like any other from now on; copy that is approved already stays approved."
    path={`/slogans/${slogan.id}`}
    method="DELETE"
    success="The slogan is taken out."
    variant="text"
  />
);

export function SlogansOfSponsor({ sponsorId }: { sponsorId: string }) {
  const { data = [], isPending } = useGetList<Slogan>('slogans', { filter: { sponsorId }, pagination: { page: 1, perPage: 100 }, sort: { field: 'text', order: 'ASC' } });
  if (isPending) return null;
  const may = iMay('slogans', 'edit');
  return (
    <Section title="Slogans" lead={LEAD} actions={may && <RegisterButton sponsorId={sponsorId} />}>
      {data.length === 0 ? (
        <EmptyList>No slogan is registered.</EmptyList>
      ) : (
        <Rows<Slogan>
          label="Slogans of this sponsor"
          rows={data}
          columns={[
            { label: 'Slogan', show: (slogan) => `“${slogan.text}”` },
            { label: 'Known from', show: (slogan) => slogan.knownFrom },
            { label: 'Registered', show: (slogan) => dayText(slogan.registeredOn) },
            ...(may ? [{ label: 'Change', show: (slogan: Slogan) => <TakeOutButton slogan={slogan} /> }] : []),
          ]}
        />
      )}
    </Section>
  );
}
