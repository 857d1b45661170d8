import { Box, Button, Paper, Typography } from '@mui/material';
import { Form, ResourceContextProvider, Title } from 'react-admin';
import { useWatch } from 'react-hook-form';
import { useNavigate, useParams } from 'react-router';
import { useSend } from '../../api/command.ts';
import { useServer } from '../../api/use-server.ts';
import { Go } from '../../fields/go.tsx';
import { FormError } from '../../forms/form-error.tsx';
import { today } from '../../format/day.ts';
import { DayInput } from '../../inputs/day-input.tsx';
import { NoAccess } from '../../layout/no-access.tsx';
import { usePreview } from '../../api/use-preview.ts';
import { iMay } from '../../session/rights.ts';
import { Reading } from '../../show/reading.tsx';
import type { Contract } from '../types.ts';
import type { ChangeKind } from './change-kinds.tsx';
import { ChangeSheet } from './change-sheet.tsx';
import type { ChangePreview } from './types.ts';

interface Props {
  kind: ChangeKind;
  contract: Contract;
}

function FormAndSheet({ kind, contract, sending }: Props & { sending: boolean }) {
  const values = useWatch() as Record<string, unknown>;
  const body = kind.body(values, contract);
  const asked = usePreview<ChangePreview>(`/contracts/${contract.id}/${kind.key}/preview`, body);
  const mayConfirm = body !== null && asked.isSettled && asked.data?.refusal === null;
  return (
    <Box sx={{ display: 'grid', gap: 2, gridTemplateColumns: { xs: 'minmax(0, 1fr)', lg: 'minmax(0, 5fr) minmax(0, 6fr)' }, alignItems: 'start' }}>
      <Paper variant="outlined" sx={{ p: { xs: 1.5, sm: 2.5 } }}>
        <Typography sx={{ mb: 1.5, maxWidth: '62ch' }}>{kind.explains}</Typography>
        {kind.fields(contract)}
        <DayInput source="on" label="As of" required />
        <FormError />
        <Button type="submit" variant="contained" disabled={sending || !mayConfirm} sx={{ mt: 1 }}>{sending ? 'Working…' : kind.label}</Button>
      </Paper>
      <Box sx={{ minWidth: 0 }}><ChangeSheet asked={asked} isFilledIn={body !== null} /></Box>
    </Box>
  );
}

function ChangeForm({ kind, contract }: Props) {
  const { send, sending } = useSend();
  const navigate = useNavigate();
  const submit = async (values: object) => {
    const { errors } = await send(`/contracts/${contract.id}/${kind.key}`, { method: 'POST', body: kind.body(values as Record<string, unknown>, contract) }, kind.success);
    if (errors) return errors;
    navigate(`/contracts/${contract.id}/show`);
    return undefined;
  };
  return (
    <Form onSubmit={submit} record={{}} defaultValues={{ on: today(), ...kind.defaults?.(contract) }}>
      <FormAndSheet kind={kind} contract={contract} sending={sending} />
    </Form>
  );
}

/** A change of a contract: the form on one side, what it would do to both ledgers on the other. */
export function ChangePage({ kind }: { kind: ChangeKind }) {
  const { id = '' } = useParams();
  const may = iMay('contract-changes', 'edit');
  const asked = useServer<Contract>(may ? `/contracts/${id}` : null);
  if (!may) return <NoAccess />;
  return (
    <Reading of={asked}>
      {(contract) => (
        <ResourceContextProvider value="contracts">
          <Title title={kind.title(contract)} />
          <Box component="nav" aria-label="Way back" sx={{ mb: 1 }}>
            <span aria-hidden="true">← </span>
            <Go resource="contracts" id={contract.id}>{contract.title}</Go>
          </Box>
          <ChangeForm kind={kind} contract={contract} />
        </ResourceContextProvider>
      )}
    </Reading>
  );
}
