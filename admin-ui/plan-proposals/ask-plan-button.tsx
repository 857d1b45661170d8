import { BooleanInput, RadioButtonGroupInput, TextInput, useRedirect } from 'react-admin';
import { CommandButton } from '../forms/command-button.tsx';
import { iMay } from '../session/rights.ts';
import { KIND_WORDS } from './state.tsx';
import type { PlanProposal } from './types.ts';

interface Props {
  seasonId: string;
  label?: string;
  kind?: 'plan' | 'replan';
  /** why, where the page knows it: "The game on Jan 9 is cancelled" */
  because?: string;
  gameId?: string;
  onAsked?: (id: string) => void;
}

/** Asks for a plan and leads to it. Nothing is changed by asking. */
export function AskPlanButton({ seasonId, label = 'Plan the season', kind = 'replan', because, gameId, onAsked }: Props) {
  const redirect = useRedirect();
  if (!iMay('plan-proposals', 'create')) return null;
  return (
    <CommandButton<PlanProposal>
      label={label}
      title="Plan the season"
      explains="Every read still owed is given the best place the games to come have, and room is kept for open offers. Nothing is changed until you have looked at the plan and accepted it."
      path="/plan-proposals"
      defaults={{ kind, withSeconds: true, because: because ?? '' }}
      body={(values) => ({ seasonId, kind: values['kind'], withSeconds: values['withSeconds'], because: values['because'] || null, ...(gameId ? { gameId } : {}) })}
      confirmLabel="Work it out"
      success="The plan is being worked out."
      variant="contained"
      leaves
      onDone={(proposal) => (onAsked ? onAsked(proposal.id) : redirect('show', 'plan-proposals', proposal.id))}
    >
      <RadioButtonGroupInput source="kind" label="How" choices={Object.entries(KIND_WORDS).map(([id, name]) => ({ id, name }))} row={false} helperText="Locked nights, pinned reads and what is printed stay either way" />
      <BooleanInput source="withSeconds" label="Look at read lengths and competitors too" helperText="Without it the plan is worked out in places alone" />
      <TextInput source="because" label="Why, in a few words" helperText="Optional; it stands beside the plan" fullWidth />
    </CommandButton>
  );
}
