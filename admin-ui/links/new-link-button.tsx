import { useState } from 'react';
import { CommandButton } from '../forms/command-button.tsx';
import { ChoiceInput } from '../inputs/choice-input.tsx';
import { WordsInput } from '../inputs/words-input.tsx';
import { iMay } from '../session/rights.ts';
import { AddressDialog } from './address-dialog.tsx';
import type { NewSponsorLink } from './types.ts';

const HOW_LONG = [
  { id: 14, name: 'Two weeks' },
  { id: 60, name: 'Two months' },
  { id: 300, name: 'The school year' },
] as const;

const inDays = (days: number): string => new Date(Date.now() + days * 86_400_000).toISOString();

/** Makes a link to the sponsor's own page, with its proof, its dollars and its words. */
export function NewLinkButton({ sponsorId, sponsorName }: { sponsorId: string; sponsorName: string }) {
  const [address, setAddress] = useState<string | null>(null);
  if (!iMay('links', 'edit')) return null;
  return (
    <>
      <CommandButton<NewSponsorLink>
        label="Give out a link"
        title={`A link for ${sponsorName}`}
        explains="Whoever has it sees what was promised to this sponsor, given, invoiced and paid, and nothing of anybody else; approves words or asks for a change, without signing in. Revoke it on the sponsor’s page."
        path={`/sponsors/${sponsorId}/links`}
        defaults={{ days: 60 }}
        body={(values) => ({ label: values['label'], expiresAt: inDays(Number(values['days'])) })}
        onDone={(link) => setAddress(`${window.location.origin}/#/for-sponsors/${link.token}`)}
        success="The link is made."
      >
        <WordsInput source="label" label="For whom" longest={120} required helperText="So that the list says whose it is" />
        <ChoiceInput source="days" label="Good for" choices={HOW_LONG} required />
      </CommandButton>
      {address && <AddressDialog address={address} onClose={() => setAddress(null)} />}
    </>
  );
}
