import { Paper } from '@mui/material';
import { useState } from 'react';
import { Form, Title, useRefresh } from 'react-admin';
import { errorsOf } from '../api/command.ts';
import { ask, newKey } from '../api/http.ts';
import { Waiting } from '../layout/waiting.tsx';
import { FileFields } from './file-fields.tsx';
import { PlanView } from './plan-view.tsx';
import type { ImportPlan } from './types.ts';

interface Given {
  kind: string;
  seasonId: string;
  csv: string;
}

/** A file is read, shown row by row, and written only when confirmed. */
export function ImportsPage() {
  const [given, setGiven] = useState<Given | null>(null);
  const [plan, setPlan] = useState<ImportPlan | null>(null);
  const [working, setWorking] = useState(false);
  const refresh = useRefresh();
  const send = async (values: Given, confirm: string | false) => {
    setWorking(true);
    try {
      const { kind, csv, seasonId } = values;
      const answer = await ask<ImportPlan>(`/imports/${kind}`, { method: 'POST', body: { csv, seasonId, confirm }, idempotencyKey: newKey() });
      setGiven(values);
      setPlan(answer);
      if (answer.done) refresh();
      return undefined;
    } catch (error) {
      return errorsOf(error);
    } finally {
      setWorking(false);
    }
  };
  return (
    <>
      <Title title="Imports" />
      <Paper variant="outlined" sx={{ p: { xs: 2, sm: 3 }, mb: 2 }}>
        <Form onSubmit={(values: object) => { setPlan(null); return send(values as Given, false); }} record={{}}>
          <FileFields working={working} onOther={() => setPlan(null)} />
        </Form>
      </Paper>
      {working && <Waiting what={plan ? 'Writing' : 'Reading the file'} />}
      {plan && given && <PlanView plan={plan} working={working} onConfirm={() => send(given, plan.planDigest)} />}
    </>
  );
}
