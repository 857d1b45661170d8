import { Button, Dialog, DialogActions, DialogContent, DialogTitle, Typography } from '@mui/material';
import { useId } from 'react';
import { Form } from 'react-admin';
import { ChoiceInput } from '../../inputs/choice-input.tsx';
import { NOT_READ_REASONS } from '../../words/choices.ts';

interface Props {
  outcome: 'cutShort' | 'notRead';
  what: string;
  onReason: (reason: string) => Promise<boolean>;
  onClose: () => void;
}

const EXPLAINS = {
  cutShort: 'At sign-off you decide whether it counts: it does where the sponsor’s name and main line were voiced.',
  notRead: 'The read stays owed to the sponsor.',
};

export function ReasonDialog({ outcome, what, onReason, onClose }: Props) {
  const titleId = useId();
  const submit = async (values: object) => {
    if (await onReason((values as { reason: string }).reason)) onClose();
  };
  return (
    <Dialog open onClose={onClose} aria-labelledby={titleId} fullWidth maxWidth="xs">
      <Form onSubmit={submit} record={{}}>
        <DialogTitle id={titleId}>{outcome === 'cutShort' ? 'Cut short' : 'Not read'}: {what}</DialogTitle>
        <DialogContent>
          <Typography sx={{ mb: 1.5 }}>{EXPLAINS[outcome]}</Typography>
          <ChoiceInput source="reason" label="Why" choices={NOT_READ_REASONS} required />
        </DialogContent>
        <DialogActions sx={{ px: 3, pb: 2 }}>
          <Button onClick={onClose}>Do not</Button>
          <Button type="submit" variant="contained">Log it</Button>
        </DialogActions>
      </Form>
    </Dialog>
  );
}
