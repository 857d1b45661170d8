import { Button } from '@mui/material';
import { Link } from 'react-router';
import { AskPlanButton } from '../plan-proposals/ask-plan-button.tsx';
import { iMay } from '../session/rights.ts';
import { Section } from '../show/section.tsx';
import type { Game } from './types.ts';

const WHAT_HAPPENED: Record<string, string> = { cancelled: 'was cancelled', postponed: 'was postponed', suspended: 'was suspended' };

/** What to do after a game has moved: its reads may need other places. */
export function ReplanSection({ game }: { game: Game }) {
  const happened = WHAT_HAPPENED[game.status] ?? (game.movedFromOn ? 'was moved' : null);
  const mayReplan = iMay('plan-proposals', 'create');
  const mayLook = iMay('plan', 'list');
  if (!happened || !(mayReplan || mayLook)) return null;
  return (
    <Section title="The plan after it" lead="Reads that lost their place, or that would now stand too close together, can find others.">
      {mayReplan && <AskPlanButton seasonId={game.seasonId} gameId={game.id} kind="replan" label="Replan the season" because={`${game.label} ${happened}`} />}{' '}
      {mayLook && <Button component={Link} to={`/plan?season=${game.seasonId}`} variant="outlined">Plan board</Button>}
    </Section>
  );
}
