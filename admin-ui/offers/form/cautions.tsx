import { Alert } from '@mui/material';
import { useGetOne } from 'react-admin';
import { useWatch } from 'react-hook-form';
import { VariesCaution } from '../../contracts/varies-caution.tsx';
import { ChoiceInput } from '../../inputs/choice-input.tsx';
import { FormGrid } from '../../forms/form-grid.tsx';
import type { Category } from '../../sponsor-categories/types.ts';
import type { Sponsor } from '../../sponsors/types.ts';
import { PRICE_VARIES } from '../../words/choices.ts';

export function VariesFields() {
  const varies = useWatch({ name: 'priceVariesWith' }) as string | undefined;
  return (
    <>
      <FormGrid>
        <ChoiceInput source="priceVariesWith" label="The price goes up and down with" choices={PRICE_VARIES} defaultValue="nothing" required />
      </FormGrid>
      {varies && varies !== 'nothing' && <VariesCaution />}
    </>
  );
}

/** Shown only where the department does not take sponsors of this category. */
export function BlockedCategoryNote() {
  const sponsorId = useWatch({ name: 'sponsorId' }) as string | undefined;
  const { data: sponsor } = useGetOne<Sponsor>('sponsors', { id: sponsorId ?? '' }, { enabled: Boolean(sponsorId) });
  const { data: category } = useGetOne<Category>('sponsor-categories', { id: sponsor?.categoryId ?? '' }, { enabled: Boolean(sponsor?.categoryId) });
  if (!category?.isBlocked) return null;
  return (
    <Alert severity="warning" icon={false} sx={{ width: '100%', my: 1 }}>
      The department does not take sponsors of the category “{category.name}”. Only a recorded exception, with the name of who approved it, lets a contract be signed.
    </Alert>
  );
}
