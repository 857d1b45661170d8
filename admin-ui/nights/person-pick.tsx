import { SelectInput, useSourceContext } from 'react-admin';
import { useFormContext } from 'react-hook-form';
import type { Person } from '../people/types.ts';

/** One of the department's own people; their name and how it is said are filled in, and an announcer's measured pace is used. */
export function PersonPick({ people }: { people: readonly Person[] }) {
  const { getSource } = useSourceContext();
  const { setValue } = useFormContext();
  const fill = (personId: string) => {
    const person = people.find((one) => one.personId === personId);
    if (!person) return;
    setValue(getSource('name'), person.name, { shouldDirty: true });
    setValue(getSource('sayAs'), person.sayAs, { shouldDirty: true });
  };
  return (
    <SelectInput
      source="personId"
      label="Of the department"
      choices={people.map(({ personId, name }) => ({ id: personId, name }))}
      onChange={(event) => fill(String((event as { target?: { value?: unknown } }).target?.value ?? ''))}
      emptyText="Somebody else"
      helperText={false}
    />
  );
}
