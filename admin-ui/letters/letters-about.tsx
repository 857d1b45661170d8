import { useServer } from '../api/use-server.ts';
import { Go } from '../fields/go.tsx';
import { instantText } from '../format/instant.ts';
import { Rows } from '../lists/rows.tsx';
import { Section } from '../show/section.tsx';
import { LetterState } from './state.tsx';
import type { MessageView } from './types.ts';

/** What was sent about a document; nothing is shown where nothing was. */
export function LettersAbout({ aboutId }: { aboutId: string }) {
  const { data } = useServer<{ data: MessageView[] }>(`/messages?aboutId=${aboutId}&perPage=50`);
  if (!data || data.data.length === 0) return null;
  return (
    <Section title="Letters">
      <Rows<MessageView>
        label="Letters about it"
        rows={data.data}
        columns={[
          { label: 'Letter', show: (letter) => <Go resource="messages" id={letter.id}>{letter.subject}</Go> },
          { label: 'To', show: (letter) => letter.toAddress },
          { label: 'Written', show: (letter) => instantText(letter.recordedAt) },
          { label: 'State', show: (letter) => <LetterState state={letter.state} /> },
        ]}
      />
    </Section>
  );
}
