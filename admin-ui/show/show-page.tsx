import { Box } from '@mui/material';
import type { ReactNode } from 'react';
import { ShowBase, Title, useShowContext } from 'react-admin';
import { Waiting } from '../layout/waiting.tsx';
import { BackLink } from './back-link.tsx';
import { EditLink } from './edit-link.tsx';

interface Props<T> {
  title: (record: T) => string;
  children: (record: T) => ReactNode;
  actions?: (record: T) => ReactNode;
  canEdit?: boolean | ((record: T) => boolean);
}

function Sheet<T>({ title, children, actions, canEdit = true }: Props<T>) {
  const { record, isPending } = useShowContext();
  if (isPending || !record) return <Waiting />;
  const shown = record as T;
  const editable = typeof canEdit === 'function' ? canEdit(shown) : canEdit;
  return (
    <Box>
      <Title title={title(shown)} />
      <BackLink />
      {(editable || actions) && (
        <Box sx={{ display: 'flex', gap: 1, flexWrap: 'wrap', mb: 2 }}>
          {editable && <EditLink />}
          {actions?.(shown)}
        </Box>
      )}
      {children(shown)}
    </Box>
  );
}

/** The page of one record. */
export function ShowPage<T>(props: Props<T>) {
  return (
    <ShowBase>
      <Sheet {...props} />
    </ShowBase>
  );
}
