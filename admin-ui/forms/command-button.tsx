import { Box, Button, Dialog, DialogActions, DialogContent, DialogTitle, Typography, type ButtonProps } from '@mui/material';
import { useId, useState, type ReactNode } from 'react';
import { Form } from 'react-admin';
import { useSend } from '../api/command.ts';
import type { Asked } from '../api/http.ts';
import { FormError } from './form-error.tsx';

export interface CommandProps<T> {
  label: string;
  title: string;
  /** What the command does, in one or two sentences, before it is done. */
  explains: ReactNode;
  path: string;
  success: string;
  method?: Asked['method'];
  version?: number;
  confirmLabel?: string;
  defaults?: Record<string, unknown>;
  body?: (values: Record<string, unknown>) => unknown;
  onDone?: (answer: T) => void;
  variant?: ButtonProps['variant'];
  color?: ButtonProps['color'];
  wide?: boolean;
  /** The page is left when it is done. */
  leaves?: boolean;
  children?: ReactNode;
}

/** A button that opens a dialog, says what will happen, asks what it must, and does it. */
export function CommandButton<T>(props: CommandProps<T>) {
  const [open, setOpen] = useState(false);
  const { send, sending } = useSend();
  const titleId = useId();
  const submit = async (values: object) => {
    const body = props.body ? props.body(values as Record<string, unknown>) : values;
    const { answer, errors } = await send<T>(
      props.path,
      { method: props.method ?? 'POST', ...(props.method === 'DELETE' ? {} : { body }), ...(props.version === undefined ? {} : { version: props.version }) },
      props.success,
      props.leaves,
    );
    if (errors) return errors;
    setOpen(false);
    props.onDone?.(answer as T);
    return undefined;
  };
  return (
    <>
      <Button variant={props.variant ?? 'outlined'} color={props.color ?? 'primary'} onClick={() => setOpen(true)}>
        {props.label}
      </Button>
      <Dialog open={open} onClose={() => setOpen(false)} aria-labelledby={titleId} fullWidth maxWidth={props.wide ? 'md' : 'sm'}>
        <Form onSubmit={submit} {...(props.defaults ? { defaultValues: props.defaults } : {})} record={{}}>
          <DialogTitle id={titleId}>{props.title}</DialogTitle>
          <DialogContent>
            <Typography component="div" sx={{ mb: props.children ? 2 : 0 }}>
              {props.explains}
            </Typography>
            {props.children}
            <FormError />
          </DialogContent>
          <DialogActions sx={{ px: 3, pb: 2 }}>
            <Button onClick={() => setOpen(false)}>Do not</Button>
            <Button type="submit" variant="contained" color={props.color ?? 'primary'} disabled={sending}>
              {sending ? 'Working…' : (props.confirmLabel ?? props.label)}
            </Button>
          </DialogActions>
        </Form>
      </Dialog>
    </>
  );
}

/** Buttons of a page in a row that wraps. */
export function Actions({ children }: { children: ReactNode }) {
  return <Box sx={{ display: 'flex', gap: 1, flexWrap: 'wrap', my: 1.5 }}>{children}</Box>;
}
