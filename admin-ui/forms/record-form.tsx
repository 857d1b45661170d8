import { Box, Paper } from '@mui/material';
import { useState, type ReactNode } from 'react';
import { CreateBase, EditBase, SimpleForm, Title, useEditContext, type RaRecord } from 'react-admin';
import { newKey } from '../api/http.ts';
import { BackLink } from '../show/back-link.tsx';
import { Waiting } from '../layout/waiting.tsx';
import { FormToolbar } from './form-toolbar.tsx';

interface Props {
  title: string;
  children: ReactNode;
  aside?: ReactNode;
  defaults?: Record<string, unknown>;
  transform?: (values: RaRecord) => Record<string, unknown>;
  redirect?: 'show' | 'list' | ((resource?: string, id?: unknown) => string);
  /** Fields the form needs that the record holds in another shape. */
  expand?: (record: never) => object;
  saveLabel?: string;
}

const sheet = { maxWidth: 960, p: { xs: 0, sm: 1 } } as const;

/** The page that adds a record. Its key is made with the form, so that pressing twice adds once. */
export function CreatePage({ title, children, aside, defaults, transform, redirect = 'show', saveLabel = 'Add' }: Props) {
  const [idempotencyKey] = useState(newKey);
  return (
    <CreateBase redirect={redirect as 'show'} {...(transform ? { transform: transform as never } : {})} mutationOptions={{ meta: { idempotencyKey } }}>
      <Title title={title} />
      <BackLink />
      {aside}
      <Paper variant="outlined" sx={sheet}>
        <SimpleForm toolbar={<FormToolbar saveLabel={saveLabel} alwaysOn />} {...(defaults ? { defaultValues: defaults } : {})}>
          {children}
        </SimpleForm>
      </Paper>
    </CreateBase>
  );
}

function EditSheet({ title, children, aside }: { title: string | ((record: never) => string); children: ReactNode; aside?: ReactNode }) {
  const { record, isPending } = useEditContext();
  if (isPending || !record) return <Waiting />;
  return (
    <Box>
      <Title title={typeof title === 'function' ? title(record as never) : title} />
      <BackLink toRecord />
      {aside}
      <Paper variant="outlined" sx={sheet}>
        <SimpleForm toolbar={<FormToolbar />}>{children}</SimpleForm>
      </Paper>
    </Box>
  );
}

/** The page that corrects a record; it waits for the server, so that a refusal stands under its field. */
export function EditPage({ title, children, aside, transform, expand, redirect = 'show' }: Omit<Props, 'title' | 'defaults'> & { title: string | ((record: never) => string) }) {
  return (
    <EditBase mutationMode="pessimistic" redirect={redirect as 'show'} {...(expand ? { queryOptions: { select: expand } as never } : {})} {...(transform ? { transform: transform as never } : {})}>
      <EditSheet title={title} aside={aside}>
        {children}
      </EditSheet>
    </EditBase>
  );
}
