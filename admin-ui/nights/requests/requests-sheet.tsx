import { reasonInWords } from '../../../server/domain/night/reason-words.ts';
import { REQUEST_TITLES, requestLine } from '../../../server/domain/night/desk/requests/request-text.ts';
import { useServer } from '../../api/use-server.ts';
import { Tag, type Mood } from '../../fields/tag.tsx';
import { instantText } from '../../format/instant.ts';
import { EmptyList } from '../../lists/empty-list.tsx';
import { Rows } from '../../lists/rows.tsx';
import { iMay } from '../../session/rights.ts';
import { Reading } from '../../show/reading.tsx';
import { Section } from '../../show/section.tsx';
import type { Night } from '../types.ts';
import { AnswerButtons } from './answer-buttons.tsx';
import { PublicForm } from './public-form.tsx';
import type { NightRequest } from './types.ts';

const STATES: Record<NightRequest['state'], readonly [string, Mood]> = {
  waiting: ['Waiting', 'care'], approved: ['Approved', 'plain'], read: ['Read', 'good'], declined: ['Declined', 'bad'], expired: ['Expired', 'plain'],
};
const SOURCES: Record<NightRequest['source'], string> = { table: 'At the table', public: 'Public form', office: 'Office' };

function State({ request: { state, answers } }: { request: NightRequest }) {
  const last = answers.findLast(({ answer }) => answer === state);
  const allowed = answers.findLast(({ nameAllowedBy }) => nameAllowedBy)?.nameAllowedBy;
  return (
    <>
      <Tag mood={STATES[state][1]}>{STATES[state][0]}</Tag>
      {[last?.answeredByName && ` by ${last.answeredByName}`, last?.reason && `: ${reasonInWords(last.reason)}`, allowed && `; name allowed by ${allowed}`].filter(Boolean).join('')}
    </>
  );
}

/** Everything that was asked of this night, and what became of it. */
export function RequestsSheet({ night }: { night: Night }) {
  const requests = useServer<{ data: NightRequest[] }>(iMay('log', 'show') ? `/nights/${night.id}/requests` : null);
  return (
    <>
      {iMay('links', 'list') && <PublicForm night={night} />}
      <Section title="What was asked" lead="Every request ends as read, declined or expired.">
        <Reading of={requests}>
          {({ data }) =>
            data.length === 0 ? (
              <EmptyList>Nothing was asked yet.</EmptyList>
            ) : (
              <Rows<NightRequest>
                label="Requests of this night"
                rows={data}
                columns={[
                  { label: 'About', show: (request) => REQUEST_TITLES[request.kind] },
                  { label: 'What', show: (request) => requestLine(request.kind, request.fields) },
                  { label: 'Asked', show: (request) => `${SOURCES[request.source]}, ${instantText(request.askedAt)}` },
                  { label: 'State', show: (request) => <State request={request} /> },
                  { label: 'Answer', show: (request) => request.state === 'waiting' && <AnswerButtons request={request} onDone={() => void requests.refetch()} /> },
                ]}
              />
            )
          }
        </Reading>
      </Section>
    </>
  );
}
