import { Box } from '@mui/material';
import { ArrayInput, minLength, SimpleFormIterator, useGetList, useWrappedSource } from 'react-admin';
import { useFormContext, useWatch } from 'react-hook-form';
import { AddRow } from '../forms/add-row.tsx';
import { FormGrid, FormPart } from '../forms/form-grid.tsx';
import { RemoveRow } from '../forms/remove-row.tsx';
import { RateButton } from '../contracts/form/rate-from-card.tsx';
import { ChoiceInput } from '../inputs/choice-input.tsx';
import { CountInput } from '../inputs/count-input.tsx';
import { FlagInput } from '../inputs/flag-input.tsx';
import { MoneyInput } from '../inputs/money-input.tsx';
import { PickInput } from '../inputs/pick-input.tsx';
import { WordsInput } from '../inputs/words-input.tsx';
import type { RateCardLine } from '../rate-card/types.ts';
import { COUNTINGS } from '../words/choices.ts';

const WHATS = [{ id: 'read', name: 'A read' }, { id: 'benefit', name: 'Another benefit' }];
const HOW_MANY: Record<string, string> = { perGame: 'Reads in each game', perNight: 'Reads on each night', onOccurrence: 'At least' };

/** Offers the rate card's price of what the line names. */
function CardPrice() {
  const rate = useWrappedSource('rateCents');
  const [what, readKindId, benefitName, typed] = useWatch({ name: [useWrappedSource('what'), useWrappedSource('readKindId'), useWrappedSource('benefitName'), rate] }) as [string?, string?, string?, number?];
  const seasonId = useWatch({ name: 'seasonId' }) as string | undefined;
  const { setValue } = useFormContext();
  const { data = [] } = useGetList<RateCardLine>('rate-card-lines', { filter: { seasonId }, pagination: { page: 1, perPage: 500 }, sort: { field: 'priceCents', order: 'DESC' } }, { enabled: Boolean(seasonId) });
  const line = data.find((one) => (what === 'benefit' ? one.benefitName !== null && one.benefitName === benefitName : one.readKindId !== null && one.readKindId === readKindId));
  if (!line || line.priceCents === typed) return null;
  return <RateButton priceCents={line.priceCents} onTake={() => setValue(rate, line.priceCents, { shouldDirty: true, shouldValidate: true })} />;
}

function Line() {
  const [what, counting] = useWatch({ name: [useWrappedSource('what'), useWrappedSource('counting')] }) as [string?, string?];
  const isRead = what !== 'benefit';
  return (
    <Box sx={{ width: '100%' }}>
      <FormGrid columns={3}>
        <ChoiceInput source="what" label="What" choices={WHATS} defaultValue="read" required />
        {isRead && <PickInput source="readKindId" reference="read-kinds" label="Read kind" required />}
        {isRead && <ChoiceInput source="counting" label="Counted" choices={COUNTINGS} defaultValue="perTerm" required />}
        {!isRead && <WordsInput source="benefitName" label="Benefit" longest={120} required helperText="Banner, program page, passes" />}
        <CountInput source="quantity" label={isRead ? (HOW_MANY[counting ?? ''] ?? 'Reads in all') : 'How many'} min={counting === 'onOccurrence' && isRead ? 0 : 1} max={10_000} required={!(counting === 'onOccurrence' && isRead)} />
        <MoneyInput source="rateCents" label="Rate-card price of one" helperText="Left empty, the season’s rate card is asked" />
        {isRead && <CountInput source="mostPerGame" label="At most in one game" min={1} max={99} />}
      </FormGrid>
      <CardPrice />
    </Box>
  );
}

export function PackageFields() {
  return (
    <>
      <FormGrid>
        <WordsInput source="name" label="Name" longest={120} required />
        <PickInput source="seasonId" reference="seasons" label="Season" required />
        <MoneyInput source="priceCents" label="Price of the package" required />
        <FlagInput source="isOffered" label="It is offered now" defaultValue />
      </FormGrid>
      <FormPart title="What is in it" why="When a package is signed, its price is shared over its lines by what they would cost one by one at the rate card. What is missed is credited by those shares.">
        <ArrayInput source="lines" label={false} helperText={false} validate={minLength(1, 'A package holds at least one line.')}>
          <SimpleFormIterator addButton={<AddRow label="Add a line" />} removeButton={<RemoveRow label="Take out" />} disableReordering disableClear fullWidth>
            <Line />
          </SimpleFormIterator>
        </ArrayInput>
      </FormPart>
      <FormPart title="Note">
        <WordsInput source="note" label="Note" longest={2000} lines={3} />
      </FormPart>
    </>
  );
}
