import { Alert, List, ListItem } from '@mui/material';
import { useServer } from '../api/use-server.ts';
import { today } from '../format/day.ts';
import { FormGrid } from '../forms/form-grid.tsx';
import { DayInput } from '../inputs/day-input.tsx';
import { WordsInput } from '../inputs/words-input.tsx';
import type { Listed, Obstacle } from './types.ts';

/** What is in the way of a contract or an offer now. */
export function useInTheWay(resource: 'contracts' | 'offers', id: string): readonly Obstacle[] {
  return useServer<Listed<Obstacle>>(`/${resource}/${id}/in-the-way`).data?.data ?? [];
}

/** The exception as the server takes it: against what was shown, by whom. */
export function exceptionOf(values: Record<string, unknown>, obstacles: readonly Obstacle[]): Record<string, unknown> {
  const { companyException, ...rest } = values as { companyException?: { reason?: string; approvedByName?: string; approvedOn?: string } };
  if (obstacles.length === 0 || !companyException?.reason) return rest;
  return { ...rest, companyException: { ...companyException, approvedOn: companyException.approvedOn ?? today(), againstIds: [...new Set(obstacles.map((one) => one.againstId))] } };
}

/** Says whose right is in the way, and asks why it is let through all the same and who approved it. */
export function CompanyExceptionInput({ obstacles }: { obstacles: readonly Obstacle[] }) {
  if (obstacles.length === 0) return null;
  return (
    <>
      <Alert severity="warning" icon={false} sx={{ width: '100%', my: 1 }}>
        In the way:
        <List dense disablePadding sx={{ listStyle: 'disc', pl: 2.5 }}>
          {obstacles.map((one) => <ListItem key={`${one.againstId} ${one.words}`} disablePadding sx={{ display: 'list-item' }}>{one.words}.</ListItem>)}
        </List>
        Only an exception lets it through. It is kept with the name of who approved it.
      </Alert>
      <WordsInput source="companyException.reason" label="Why an exception" longest={500} lines={2} required />
      <FormGrid>
        <WordsInput source="companyException.approvedByName" label="Who approved it" longest={120} required />
        <DayInput source="companyException.approvedOn" label="Approved on" defaultValue={today()} required />
      </FormGrid>
    </>
  );
}
