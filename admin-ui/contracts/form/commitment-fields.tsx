import { Box } from '@mui/material';
import { SelectArrayInput, useWrappedSource } from 'react-admin';
import { useWatch } from 'react-hook-form';
import { FormGrid } from '../../forms/form-grid.tsx';
import { ChoiceInput } from '../../inputs/choice-input.tsx';
import { CountInput } from '../../inputs/count-input.tsx';
import { DaysInput } from '../../inputs/days-input.tsx';
import { GamePick } from '../../inputs/game-pick.tsx';
import { DayInput } from '../../inputs/day-input.tsx';
import { FlagInput } from '../../inputs/flag-input.tsx';
import { MoneyInput } from '../../inputs/money-input.tsx';
import { PickInput } from '../../inputs/pick-input.tsx';
import { COUNTINGS, LEVELS, PRIORITIES, SEPARATIONS, WHOSES, WINDOWS } from '../../words/choices.ts';
import type { Team } from '../../teams/types.ts';
import { RateFromCard } from './rate-from-card.tsx';

/** Two sports have a varsity each. */
const teamText = (team: Team) => `${team.label}, ${team.seasonName}`;

const READS: Record<string, string> = { perGame: 'Reads in each game', perNight: 'Reads on each night' };

function Finer() {
  const [ofTerm, ofOffer] = useWatch({ name: ['term.seasonId', 'seasonId'] }) as (string | undefined)[];
  const seasonId = ofTerm ?? ofOffer;
  return (
    <Box component="details" sx={{ width: '100%', '& summary': { cursor: 'pointer', minHeight: 44, display: 'list-item', py: 1.25, fontWeight: 600 } }}>
      <summary>Which games and windows, how often in one, how far apart</summary>
      <FormGrid columns={3}>
        <PickInput source="teamIds" reference="teams" label="Only games of these teams" shows={teamText} many sort={{ field: 'seasonName', order: 'DESC' }} filter={{ isOurs: true }} helperText="Empty for all of this season. Teams of other seasons count over their games too." />
        <SelectArrayInput source="levels" label="Only these levels" choices={LEVELS} helperText="Empty for all" />
        <ChoiceInput source="priority" label="When places are short" choices={PRIORITIES} defaultValue={2} required />
        <CountInput source="leastPerGame" label="At least in one game" max={99} helperText="A wish for the planner; nothing is billed by it" />
        <CountInput source="mostPerGame" label="At most in one game" min={1} max={99} />
        <ChoiceInput source="separation" label="Kept apart from its competitors" choices={SEPARATIONS} defaultValue="window" required />
        <DayInput source="startsOn" label="Not before" />
        <DayInput source="endsOn" label="Not after" />
        <SelectArrayInput source="windowKinds" label="Only in these windows" choices={WINDOWS} helperText="Of those of the read kind; empty for all" />
      </FormGrid>
      <GamePick source="pinnedGameIds" label="Promised aloud for these games" seasonId={seasonId} helperText="The planner keeps a read in each" />
      <DaysInput source="blackoutDays" label="Days without a read" helperText="Nothing is read or owed in a game held on one of these days." />
    </Box>
  );
}

/** One line of what was promised. */
export function CommitmentFields() {
  const counting = useWatch({ name: useWrappedSource('counting') }) as string | undefined;
  const pricing = useWatch({ name: 'term.pricing' }) as string | undefined;
  const occurs = counting === 'onOccurrence';
  return (
    <Box sx={{ width: '100%' }}>
      <FormGrid columns={3}>
        <PickInput source="readKindId" reference="read-kinds" label="Read kind" required />
        <ChoiceInput source="counting" label="Counted" choices={COUNTINGS} defaultValue="perTerm" required />
        {!occurs && <CountInput source="reads" label={READS[counting ?? ''] ?? 'Reads in all'} min={1} required />}
        {occurs && <CountInput source="readsAtLeast" label="At least" helperText="Owed even when fewer shots fall" />}
        {occurs && <CountInput source="readsAtMost" label="At most" helperText="However many shots fall" />}
        {occurs && <ChoiceInput source="whose" label="Whose shots count" choices={WHOSES} defaultValue="ours" required />}
        <MoneyInput source="rateCents" label="Rate-card price of one" required />
        {pricing === 'perRead' && <MoneyInput source="priceEachCents" label="Price of each read given" required />}
      </FormGrid>
      <RateFromCard />
      <FlagInput source="isTaxed" label="Sales tax is charged on these reads, where the seller charges any" defaultValue />
      {occurs && <FlagInput source="severalCountAsOne" label="One mention for several shots counts as one read" defaultValue={false} />}
      <Finer />
    </Box>
  );
}
