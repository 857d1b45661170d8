import { SelectInput, TextInput, ReferenceInput, AutocompleteInput } from 'react-admin';
import type { Choice } from '../words/choices.ts';

export const findFilter = (label = 'Find') => <TextInput key="q" source="q" label={label} alwaysOn resettable helperText={false} sx={{ minWidth: 180 }} />;

export const choiceFilter = (source: string, label: string, choices: readonly Choice[]) => (
  <SelectInput key={source} source={source} label={label} choices={[...choices]} alwaysOn emptyText="All" helperText={false} sx={{ minWidth: 150 }} />
);

export const pickFilter = (source: string, reference: string, label: string, shows = 'name') => (
  <ReferenceInput key={source} source={source} reference={reference} alwaysOn perPage={100} sort={{ field: shows === 'name' ? 'name' : 'id', order: 'ASC' }}>
    <AutocompleteInput label={label} optionText={shows} filterToQuery={(q: string) => ({ q })} helperText={false} sx={{ minWidth: 200 }} />
  </ReferenceInput>
);
