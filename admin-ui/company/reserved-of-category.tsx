import { useGetList } from 'react-admin';
import { changesOf, only } from '../api/changes.ts';
import { dayText, today } from '../format/day.ts';
import { CommandButton } from '../forms/command-button.tsx';
import { FormGrid } from '../forms/form-grid.tsx';
import { DayInput } from '../inputs/day-input.tsx';
import { PickInput } from '../inputs/pick-input.tsx';
import { WordsInput } from '../inputs/words-input.tsx';
import { EmptyList } from '../lists/empty-list.tsx';
import { Rows } from '../lists/rows.tsx';
import { iMay } from '../session/rights.ts';
import { Section } from '../show/section.tsx';
import type { ReservedCategory } from './types.ts';

const FIELDS = ['schoolId', 'heldBy', 'startsOn', 'endsOn', 'note'] as const;
const LEAD = 'Somebody else has the right to this category without a contract here, such as a district’s drink contract. A deal of the category is refused in those days until an exception is recorded.';

const Fields = () => (
  <>
    <WordsInput source="heldBy" label="Who holds it" longest={160} required helperText="The school district, and by which contract" />
    <FormGrid>
      <DayInput source="startsOn" label="First day" required />
      <DayInput source="endsOn" label="Last day" helperText="Empty until further notice" />
      <PickInput source="schoolId" reference="schools" label="At which school" filter={{ isOurs: true }} helperText="Empty for all" />
    </FormGrid>
    <WordsInput source="note" label="Note" longest={500} lines={2} />
  </>
);

const ReserveButton = ({ categoryId }: { categoryId: string }) => (
  <CommandButton
    label="Reserve it"
    title="Reserve the category"
    explains="Contracts that are signed already stay as they are."
    path="/reserved-categories"
    defaults={{ startsOn: today() }}
    body={(values) => ({ categoryId, ...only(values, ...FIELDS) })}
    success="The category is reserved."
  >
    <Fields />
  </CommandButton>
);

const ChangeButtons = ({ reserved }: { reserved: ReservedCategory }) => (
  <>
    <CommandButton
      label="Change"
      title="Change what is reserved"
      explains={`Held by ${reserved.heldBy}.`}
      path={`/reserved-categories/${reserved.id}`}
      method="PATCH"
      version={reserved.version}
      defaults={{ ...only(reserved, ...FIELDS) }}
      body={(values) => changesOf(Object.fromEntries(FIELDS.map((field) => [field, values[field]])), { ...reserved })}
      success="It is changed."
      variant="text"
    >
      <Fields />
    </CommandButton>
    <CommandButton label="Take out" title={`Is the category no longer reserved for ${reserved.heldBy}?`} explains="New deals of the category are no longer refused for it." path={`/reserved-categories/${reserved.id}`} method="DELETE" success="The category is free." variant="text" />
  </>
);

/** Who has the right to a category without a contract here. */
export function ReservedOfCategory({ categoryId }: { categoryId: string }) {
  const { data = [], isPending } = useGetList<ReservedCategory>('reserved-categories', { filter: { categoryId }, pagination: { page: 1, perPage: 100 }, sort: { field: 'startsOn', order: 'ASC' } });
  if (isPending) return null;
  const may = iMay('reserved-categories', 'edit');
  return (
    <Section title="Reserved for others" lead={LEAD} actions={may && <ReserveButton categoryId={categoryId} />}>
      {data.length === 0 ? (
        <EmptyList>Nobody holds this category without a contract here.</EmptyList>
      ) : (
        <Rows<ReservedCategory>
          label="Reserved for others"
          rows={data}
          columns={[
            { label: 'Held by', show: (one) => one.heldBy },
            { label: 'School', show: (one) => one.schoolName ?? 'All schools' },
            { label: 'Days', show: (one) => `${dayText(one.startsOn)} ${one.endsOn ? `to ${dayText(one.endsOn)}` : 'until further notice'}` },
            { label: 'Note', show: (one) => one.note ?? '–' },
            ...(may ? [{ label: 'Change', show: (one: ReservedCategory) => <ChangeButtons reserved={one} /> }] : []),
          ]}
        />
      )}
    </Section>
  );
}
