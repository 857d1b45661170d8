import { Alert } from '@mui/material';
import { useWatch } from 'react-hook-form';
import type { CodePart, JournalColumn, JournalLayout } from '../../server/domain/billing/journal-layout.ts';
import type { JournalNames } from '../../server/domain/billing/journal-lines.ts';
import { FormPart } from '../forms/form-grid.tsx';
import { LinesTable } from './lines-table.tsx';
import { sampleOf } from './sample.ts';

/** The form as a layout; rows just added have nothing in them yet. */
export function layoutTyped(form: Partial<JournalLayout>): JournalLayout {
  const columns = ((form.columns ?? []) as Partial<JournalColumn>[]).map(({ field = 'blank', heading, text, part }) => ({ field, heading: heading ?? '', text: text ?? null, part: part ?? null }));
  const codeParts = ((form.codeParts ?? []) as Partial<CodePart>[]).map(({ name, kind = 'constant', otherwise, values }) => ({
    name: name ?? '', kind, otherwise: otherwise || null, values: kind === 'constant' ? [] : (values ?? []).filter((value) => value?.key && value.text).map(({ key, text }) => ({ key, text })),
  }));
  return { ...(form as JournalLayout), separator: form.separator ?? '', columns, codeParts };
}

/** Five lines that follow the form while it is filled in. */
export function LayoutSample({ names }: { names: JournalNames }) {
  const layout = layoutTyped(useWatch() as Partial<JournalLayout>);
  const { rows, missing } = sampleOf(layout, names);
  return (
    <FormPart title="Five lines of it" why="A read given, a check received and applied, written as the layout stands now.">
      <LinesTable label="Five lines of the journal" headings={layout.columns.map((column) => column.heading)} rows={rows} />
      {missing.length > 0 && (
        <Alert severity="warning" sx={{ mt: 1 }}>
          Still to be mapped, among others:
          <ul>{missing.map((one) => <li key={one}>{one}</li>)}</ul>
        </Alert>
      )}
    </FormPart>
  );
}
