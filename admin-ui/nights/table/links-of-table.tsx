import { useQueryClient } from '@tanstack/react-query';
import { useServer } from '../../api/use-server.ts';
import { Tag, type Mood } from '../../fields/tag.tsx';
import { CommandButton } from '../../forms/command-button.tsx';
import { instantText } from '../../format/instant.ts';
import { EmptyList } from '../../lists/empty-list.tsx';
import { Rows } from '../../lists/rows.tsx';
import { iMay } from '../../session/rights.ts';
import { Reading } from '../../show/reading.tsx';
import { Section } from '../../show/section.tsx';
import { LINK_STATE_WORDS, wordFor } from '../../words/choices.ts';
import type { Night } from '../types.ts';
import { NewTableLinkButton } from './new-table-link-button.tsx';
import type { TableLink } from './types.ts';

const MOODS: Record<TableLink['state'], Mood> = { open: 'good', early: 'plain', ended: 'plain', revoked: 'bad' };

const whoseLink = ({ label, personName }: TableLink): string => (personName === null ? (label ?? '–') : `${personName}, signed in`);

function RevokeButton({ path, link }: { path: string; link: TableLink }) {
  const client = useQueryClient();
  const isOwn = link.personName !== null;
  return (
    <CommandButton
      label="Revoke"
      title={`Revoke the link for ${link.personName ?? link.label}?`}
      explains={`From now on it opens nothing, also for whoever is at the table with it. What it has logged so far stays in the log. What its device has not sent yet stays on that device, where it can be saved as a file for you to take in.${isOwn ? ' Signing in again opens the desk again.' : ''}`}
      path={`${path}/${link.id}/revoke`}
      body={() => ({})}
      onDone={() => void client.invalidateQueries({ queryKey: ['server', path] })}
      success="The link is revoked."
      color="error"
      variant="text"
    />
  );
}

/** Who gets in to the table without signing in: links given out, and devices on which somebody opened the desk. */
export function LinksOfTable({ night }: { night: Night }) {
  const path = `/nights/${night.id}/table-links`;
  const links = useServer<{ data: TableLink[] }>(path);
  const canGiveOut = night.state === 'open' && iMay('links', 'edit');
  return (
    <Section
      title="Links to the table"
      lead="A link and its PIN let a substitute or a spotter work this one table without an account. It opens with the day before the night, so that the night is stored before the gym, and ends three days after it."
      actions={canGiveOut && <NewTableLinkButton night={night} />}
    >
      <Reading of={links}>
        {({ data }) =>
          data.length === 0 ? (
            <EmptyList>No link was given out yet, and nobody has opened the desk.</EmptyList>
          ) : (
            <Rows<TableLink>
              label="Links to this table"
              rows={data}
              columns={[
                { label: 'For whom', show: whoseLink },
                { label: 'State', show: (link) => <Tag mood={MOODS[link.state]}>{wordFor(LINK_STATE_WORDS, link.state)}</Tag> },
                { label: 'Opens', show: (link) => instantText(link.notBeforeAt) },
                { label: 'Ends', show: (link) => instantText(link.expiresAt) },
                { label: 'Signs off', show: (link) => (link.personName !== null ? 'By role' : link.maySignOff ? 'Yes' : 'No') },
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
