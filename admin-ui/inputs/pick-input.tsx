import { AutocompleteArrayInput, AutocompleteInput, ReferenceArrayInput, ReferenceInput, required as isNeeded } from 'react-admin';

interface Props {
  source: string;
  reference: string;
  label: string;
  shows?: string | ((record: never) => string);
  sort?: { field: string; order: 'ASC' | 'DESC' };
  filter?: Record<string, unknown>;
  defaultValue?: string;
  helperText?: string;
  required?: boolean;
  many?: boolean;
}

/** Picks another record by its name. */
export function PickInput({ source, reference, label, shows = 'name', sort = { field: 'name', order: 'ASC' }, filter, required, helperText, many, defaultValue }: Props) {
  const optionText = shows as string;
  const validate = required ? [isNeeded()] : [];
  if (many) {
    return (
      <ReferenceArrayInput source={source} reference={reference} perPage={100} sort={sort} filter={filter ?? {}}>
        <AutocompleteArrayInput label={label} optionText={optionText} filterToQuery={(q: string) => ({ q })} validate={validate} helperText={helperText ?? false} />
      </ReferenceArrayInput>
    );
  }
  return (
    <ReferenceInput source={source} reference={reference} perPage={100} sort={sort} filter={filter ?? {}}>
      <AutocompleteInput
        label={label}
        optionText={optionText}
        filterToQuery={(q: string) => ({ q })}
        validate={validate}
        helperText={helperText ?? false}
        {...(defaultValue ? { defaultValue } : {})}
      />
    </ReferenceInput>
  );
}
