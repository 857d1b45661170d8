import { Paper } from '@mui/material';
import { Form, SaveButton, Title, useGetList, useRedirect } from 'react-admin';
import { useParams } from 'react-router';
import type { JournalLayout } from '../../server/domain/billing/journal-layout.ts';
import type { JournalNames } from '../../server/domain/billing/journal-lines.ts';
import type { Account } from '../accounts/types.ts';
import { useSend } from '../api/command.ts';
import { useServer } from '../api/use-server.ts';
import { FormError } from '../forms/form-error.tsx';
import { FormGrid } from '../forms/form-grid.tsx';
import { ChoiceInput } from '../inputs/choice-input.tsx';
import { FlagInput } from '../inputs/flag-input.tsx';
import { WordsInput } from '../inputs/words-input.tsx';
import { iMay } from '../session/rights.ts';
import { BackLink } from '../show/back-link.tsx';
import { Reading } from '../show/reading.tsx';
import type { Team } from '../teams/types.ts';
import { CodePartsFields, type Keys } from './code-parts-fields.tsx';
import { ColumnsFields } from './columns-fields.tsx';
import { LayoutSample, layoutTyped } from './layout-sample.tsx';
import type { LayoutOfSeller } from './types.ts';

const DELIMITERS = [{ id: 'comma', name: 'Comma' }, { id: 'semicolon', name: 'Semicolon' }, { id: 'tab', name: 'Tab' }];
const DAYS = ['2026-12-31', '12/31/2026', '20261231'].map((id) => ({ id, name: id }));
const DECIMALS = [{ id: 'point', name: '1234.50' }, { id: 'comma', name: '1234,50' }];
const SIDES = [{ id: 'debit', name: 'Debits above zero, credits below' }, { id: 'credit', name: 'Credits above zero, debits below' }];

/** Accounts, our schools and our teams: for the choices, and to name the sample's lines by. */
function useNames(): { names: JournalNames; keys: Keys } {
  const page = { pagination: { page: 1, perPage: 100 }, sort: { field: 'name', order: 'ASC' as const } };
  const { data: accounts = [] } = useGetList<Account>('accounts', page);
  const { data: schools = [] } = useGetList<{ id: string; name: string; accountCode: string | null; isOurs: boolean }>('schools', { ...page, filter: { isOurs: true } });
  const { data: teams = [] } = useGetList<Team>('teams', page);
  const ours = teams.filter((team) => schools.some((school) => school.id === team.schoolId));
  const schoolOf = (id: string) => schools.find((school) => school.id === id);
  return {
    names: {
      accounts: new Map(accounts.map((account) => [account.code, account])),
      teams: new Map(ours.map((team) => [String(team.id), { name: team.name, schoolId: team.schoolId, schoolName: schoolOf(team.schoolId)?.name ?? '', schoolCode: schoolOf(team.schoolId)?.accountCode ?? null }])),
    },
    keys: {
      account: accounts.map((account) => ({ id: account.code, name: `${account.code} ${account.name}` })),
      school: schools.map((school) => ({ id: school.id, name: school.name })),
      team: ours.map((team) => ({ id: String(team.id), name: [schoolOf(team.schoolId)?.name, team.name].filter(Boolean).join(', ') })),
    },
  };
}

function LayoutForm({ layout }: { layout: LayoutOfSeller }) {
  const { names, keys } = useNames();
  const { send, sending } = useSend();
  const redirect = useRedirect();
  const { id, sellerId: _, sellerName: __, version, ...before } = layout;
  const submit = async (values: object) => {
    const { errors } = await send(`/journal-layouts/${id}`, { method: 'PUT', body: layoutTyped(values as JournalLayout), version }, 'The layout is saved. It holds from the next batch on.', true);
    if (errors) return errors;
    redirect('list', 'journal-layouts');
    return undefined;
  };
  return (
    <Paper variant="outlined" sx={{ p: { xs: 1.5, sm: 3 } }}>
      <Form onSubmit={submit} defaultValues={before}>
        <FormGrid>
          <WordsInput source="name" label="Name of the layout" longest={80} required />
          <ChoiceInput source="delimiter" label="Between the columns" choices={DELIMITERS} required />
          <ChoiceInput source="dayForm" label="Days are written" choices={DAYS} required />
          <ChoiceInput source="decimalSign" label="Amounts are written" choices={DECIMALS} required />
          <ChoiceInput source="positiveIs" label="In a column of signed amounts" choices={SIDES} required />
          <FlagInput source="hasHeadings" label="The first line holds the headings" />
        </FormGrid>
        <ColumnsFields />
        <CodePartsFields keys={keys} />
        <LayoutSample names={names} />
        <FormError />
        {iMay('journal-layouts', 'edit') && <SaveButton label={sending ? 'Saving…' : 'Save'} alwaysEnable={!sending} icon={<span />} sx={{ mt: 2, '& .MuiButton-startIcon': { display: 'none' } }} />}
      </Form>
    </Paper>
  );
}

/** How one seller's journal is laid out, with five lines of it as it is changed. */
export function LayoutEdit() {
  const { id } = useParams();
  const asked = useServer<LayoutOfSeller>(`/journal-layouts/${id}`);
  return (
    <Reading of={asked}>
      {(layout) => (
        <>
          <Title title={`Journal of ${layout.sellerName}`} />
          <BackLink />
          <p>Consult the business office about the codes and the form of the file.</p>
          <LayoutForm key={layout.version} layout={layout} />
        </>
      )}
    </Reading>
  );
}
