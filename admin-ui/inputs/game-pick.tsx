import { dayText } from '../format/day.ts';
import { PickInput } from './pick-input.tsx';

/** Home games of a season, with the day: rivals may come twice. */
export const GamePick = ({ source, label, seasonId, helperText, required }: { source: string; label: string; seasonId: string | undefined; helperText?: string; required?: boolean }) => (
  <PickInput
    source={source}
    reference="games"
    label={label}
    shows={(game: { label: string; playedOn: string }) => `${dayText(game.playedOn, 'weekday')}, ${game.label}`}
    sort={{ field: 'playedOn', order: 'ASC' }}
    filter={{ isHome: true, ...(seasonId ? { seasonId } : {}) }}
    many
    {...(helperText ? { helperText } : {})}
    {...(required ? { required } : {})}
  />
);
