import { SelectInput, useGetList } from 'react-admin';
import type { Person } from '../people/types.ts';

/** Whose call it is, by name. */
export function CallerInput() {
  const { data = [] } = useGetList<Person>('people', { pagination: { page: 1, perPage: 100 }, sort: { field: 'name', order: 'ASC' } });
  return (
    <SelectInput
      source="callerPersonId"
      label="Whose call"
      choices={data.map(({ personId, name }) => ({ id: personId, name }))}
      emptyText="Nobody’s yet"
      helperText={false}
    />
  );
}
