import { Box, Button } from '@mui/material';
import { Link } from 'react-router';
import { moneyText } from '../format/money.ts';
import { iMay } from '../session/rights.ts';
import type { AtRiskLine, RepairKind } from './types.ts';

const BUTTONS: Record<RepairKind, { label: string; resource: string; action: 'create' | 'list' | 'show' }> = {
  liftHold: { label: 'Lift the hold', resource: 'contract-changes', action: 'create' },
  makegood: { label: 'Propose it', resource: 'contracts', action: 'create' },
  proposed: { label: 'See the proposal', resource: 'contracts', action: 'list' },
  place: { label: 'Place them', resource: 'plan', action: 'list' },
  replan: { label: 'Open the plan', resource: 'plan', action: 'list' },
  wait: { label: 'Open the contract', resource: 'contracts', action: 'show' },
  speak: { label: 'Open the contract', resource: 'contracts', action: 'show' },
};

/** The cheapest thing to do, what it costs, and the button that goes there. */
export function RepairOf({ line }: { line: AtRiskLine }) {
  const { label, resource, action } = BUTTONS[line.repair.kind];
  return (
    <Box sx={{ display: 'grid', gap: 0.5, justifyItems: 'start' }}>
      <span>{line.repair.words}{line.repair.costCents === null ? '' : line.repair.costCents === 0 ? ' (costs nothing)' : ` (${moneyText(line.repair.costCents)})`}</span>
      {iMay(resource, action) && <Button component={Link} to={line.to} variant="outlined" size="small" aria-label={`${label}: ${line.sponsorName}, ${line.readKindName}`}>{label}</Button>}
    </Box>
  );
}
