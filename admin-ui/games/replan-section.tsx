import { Button } from '@mui/material';
import { useRedirect } from 'react-admin';
import { Link } from 'react-router';
import { CommandButton } from '../forms/command-button.tsx';
import { iMay } from '../session/rights.ts';
import { Section } from '../show/section.tsx';
import type { Game } from './types.ts';

function ReplanButton({ game }: { game: Game }) {
  const redirect = useRedirect();
  const because = `${game.label} ${game.status === 'cancelled' ? 'was cancelled' : game.status === 'suspended' ? 'was suspended' : 'was moved'}`;
  return (
    <CommandButton<{ id: string }>
      label="Replan the season"
      title="Replan the season?"
      explains="A plan is worked out that moves as few reads as it can. You see before and after side by side, and nothing changes until you accept it."
      path="/plan-proposals"
      body={() => ({ seasonId: game.seasonId, kind: 'replan', because, gameId: game.id })}
      confirmLabel="Work it out"
      success="The new plan is being worked out."
      variant="contained"
      leaves
      onDone={(answer) => redirect(`/plan-proposals/${answer.id}/show`)}
    />
  );
}

const HAS_MOVED = new Set(['cancelled', 'postponed', 'suspended']);

/** What to do after a game has moved: its reads may need other places. */
export function ReplanSection({ game }: { game: Game }) {
  const mayReplan = iMay('plan-proposals', 'edit');
  const mayLook = iMay('plan', 'list');
  if (!(HAS_MOVED.has(game.status) || game.movedFromOn) || !(mayReplan || mayLook)) return null;
  return (
    <Section title="The plan after it" lead="Reads that lost their place, or that would now stand too close together, can find others.">
      {mayReplan && <ReplanButton game={game} />}{' '}
      {mayLook && <Button component={Link} to={`/plan?seasonId=${game.seasonId}`} variant="outlined">Plan board</Button>}
    </Section>
  );
}
