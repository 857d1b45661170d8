import { Alert } from '@mui/material';
import { useGetOne } from 'react-admin';
import { useWatch } from 'react-hook-form';
import { FormGrid } from '../../forms/form-grid.tsx';
import { WordsInput } from '../../inputs/words-input.tsx';
import type { Category } from '../../sponsor-categories/types.ts';
import type { Sponsor } from '../../sponsors/types.ts';

/** Shown only where the department does not take sponsors of this category. */
export function ExceptionFields() {
  const sponsorId = useWatch({ name: 'sponsorId' }) as string | undefined;
  const { data: sponsor } = useGetOne<Sponsor>('sponsors', { id: sponsorId ?? '' }, { enabled: Boolean(sponsorId) });
  const { data: category } = useGetOne<Category>('sponsor-categories', { id: sponsor?.categoryId ?? '' }, { enabled: Boolean(sponsor?.categoryId) });
  if (!category?.isBlocked) return null;
  return (
    <>
      <Alert severity="warning" icon={false} sx={{ width: '100%', my: 1 }}>The department does not take sponsors of the category “{category.name}”. Only a recorded exception allows this contract.</Alert>
      <FormGrid>
        <WordsInput source="categoryException" label="Why an exception" longest={500} required />
        <WordsInput source="categoryExceptionApprovedBy" label="Who approved it" longest={120} required />
      </FormGrid>
    </>
  );
}
