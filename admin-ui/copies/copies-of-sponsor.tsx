import { useGetList } from 'react-admin';
import { Go } from '../fields/go.tsx';
import { EmptyList } from '../lists/empty-list.tsx';
import { Rows } from '../lists/rows.tsx';
import { Section } from '../show/section.tsx';
import { CheckTag } from './check-tag.tsx';
import { CopyState } from './state.tsx';
import type { Copy } from './types.ts';

export function CopiesOfSponsor({ sponsorId }: { sponsorId: string }) {
  const { data = [], isPending } = useGetList<Copy>('copies', { filter: { sponsorId }, pagination: { page: 1, perPage: 100 }, sort: { field: 'title', order: 'ASC' } });
  if (isPending) return null;
  return (
    <Section title="Copy">
      {data.length === 0 ? (
        <EmptyList>No words to be read yet. <Go to="/copies/create">Add copy</Go> and have it approved before the first night.</EmptyList>
      ) : (
        <Rows<Copy>
          label="Copy of this sponsor"
          rows={data}
          columns={[
            { label: 'Copy', show: (copy) => <Go resource="copies" id={copy.id}>{copy.title}</Go> },
            { label: 'Read kind', show: (copy) => copy.readKindName },
            { label: 'Copy check', show: (copy) => <CheckTag copy={copy} /> },
            { label: 'State', show: (copy) => <CopyState state={copy.state} /> },
          ]}
        />
      )}
    </Section>
  );
}
