import { Box } from '@mui/material';
import { useGetRecordRepresentation, useGetResourceLabel, useRecordContext, useResourceContext } from 'react-admin';
import { Go } from '../fields/go.tsx';

/** The way back: to the list, or from a form to the record. */
export function BackLink({ toRecord = false }: { toRecord?: boolean }) {
  const resource = useResourceContext();
  const record = useRecordContext();
  const label = useGetResourceLabel();
  const nameOf = useGetRecordRepresentation(resource);
  if (!resource) return null;
  return (
    <Box component="nav" aria-label="Way back" sx={{ mb: 1 }}>
      <span aria-hidden="true">← </span>
      {toRecord && record ? <Go resource={resource} id={String(record.id)}>{nameOf(record)}</Go> : <Go to={`/${resource}`}>{label(resource, 2)}</Go>}
    </Box>
  );
}
