import { Button } from '@mui/material';
import { useRecordContext, useResourceContext } from 'react-admin';
import { Link } from 'react-router';
import { iMay } from '../session/rights.ts';

export function EditLink() {
  const resource = useResourceContext();
  const record = useRecordContext();
  if (!resource || !record || !iMay(resource, 'edit')) return null;
  return (
    <Button component={Link} to={`/${resource}/${record.id}`} variant="outlined">
      Edit
    </Button>
  );
}
