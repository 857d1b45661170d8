import { Button } from '@mui/material';
import { Link } from 'react-router';
import { iMay } from '../../session/rights.ts';
import type { Season } from '../types.ts';

/** To the page that makes the next season; a season has one. */
export function RollOverLink({ season }: { season: Season }) {
  if (season.followedBySeasonId || !iMay('season-roll-over', 'edit')) return null;
  return <Button component={Link} to={`/seasons/${season.id}/roll-over`} variant="outlined">Roll over to the next season…</Button>;
}
