import { Alert } from '@mui/material';
import { useFormState } from 'react-hook-form';

/** What the server said about the form as a whole. */
export function FormError() {
  const { errors } = useFormState();
  const root = errors.root as { serverError?: { message?: string } } | undefined;
  const message = root?.serverError?.message;
  return message ? (
    <Alert severity="error" role="alert" sx={{ width: '100%', my: 1 }}>
      {message}
    </Alert>
  ) : null;
}
