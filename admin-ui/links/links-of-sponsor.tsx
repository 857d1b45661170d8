import { useQueryClient } from '@tanstack/react-query';
import { useServer } from '../api/use-server.ts';
import { Tag, type Mood } from '../fields/tag.tsx';
import { CommandButton } from '../forms/command-button.tsx';
import { instantText } from '../format/instant.ts';
import { EmptyList } from '../lists/empty-list.tsx';
import { Rows } from '../lists/rows.tsx';
import { iMay } from '../session/rights.ts';
import { Reading } from '../show/reading.tsx';
import { Section } from '../show/section.tsx';
import { LINK_STATE_WORDS, wordFor } from '../words/choices.ts';
import { NewLinkButton } from './new-link-button.tsx';
import type { SponsorLink } from './types.ts';

const MOODS: Record<SponsorLink['state'], Mood> = { open: 'good', early: 'plain', ended: 'plain', revoked: 'bad' };

function RevokeButton({ path, link }: { path: string; link: SponsorLink }) {
  const client = useQueryClient();
  return (
    <CommandButton
      label="Revoke"
      title={`Revoke the link for ${link.label ?? 'this sponsor'}?`}
      explains="From now on it opens nothing, also for whoever has the page open."
      path={`${path}/${link.id}/revoke`}
      body={() => ({})}
      onDone={() => void client.invalidateQueries({ queryKey: ['server', path] })}
      success="The link is revoked."
      color="error"
      variant="text"
    />
  );
}

export function LinksOfSponsor({ sponsorId, sponsorName }: { sponsorId: string; sponsorName: string }) {
  const path = `/sponsors/${sponsorId}/links`;
  const links = useServer<{ data: SponsorLink[] }>(iMay('links', 'list') ? path : null);
  if (!iMay('links', 'list')) return null;
  return (
    <Section title="Links" lead="A link opens the sponsor’s own page on a phone, without signing in: its reads, its nights, its dollars, and its words to approve." actions={<NewLinkButton sponsorId={sponsorId} sponsorName={sponsorName} />}>
      <Reading of={links}>
        {({ data }) =>
          data.length === 0 ? (
            <EmptyList>No link was given out yet.</EmptyList>
          ) : (
            <Rows<SponsorLink>
              label="Links of this sponsor"
              rows={data}
              columns={[
                { label: 'For whom', show: (link) => link.label ?? '–' },
                { label: 'State', show: (link) => <><Tag mood={MOODS[link.state]}>{wordFor(LINK_STATE_WORDS, link.state)}</Tag>{link.revokedAt ? ` on ${instantText(link.revokedAt)}` : ''}</> },
                { label: 'Good until', show: (link) => instantText(link.expiresAt) },
                { label: 'Made', show: (link) => `${instantText(link.madeAt)}${link.madeByName ? ` by ${link.madeByName}` : ''}` },
                { label: 'Change', show: (link) => (link.state === 'open' || link.state === 'early') && <RevokeButton path={path} link={link} /> },
              ]}
            />
          )
        }
      </Reading>
    </Section>
  );
}
