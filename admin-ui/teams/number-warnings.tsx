import { Alert } from '@mui/material';
import { useGetOne } from 'react-admin';
import { useWatch } from 'react-hook-form';
import { numberWarnings } from '../../server/domain/season/legal-numbers.ts';
import { profileOn } from '../seasons/sports.ts';
import type { Season } from '../seasons/types.ts';
import type { RosterPlayer } from './types.ts';

/** Warns of odd numbers while they are typed, by the rule the server warns by; refuses nothing. */
export function NumberWarnings({ seasonId }: { seasonId: string }) {
  const { data: season } = useGetOne<Season>('seasons', { id: seasonId });
  const players = useWatch({ name: 'players' }) as RosterPlayer[] | undefined;
  const profile = profileOn(season?.sport, season?.startsOn);
  const warnings = profile ? numberWarnings(profile.numberRule, (players ?? []).map((player) => player?.number ?? '')) : [];
  if (warnings.length === 0) return null;
  return (
    <Alert severity="warning" icon={false} role="status" sx={{ my: 1 }}>
      {warnings.map((warning) => (
        <div key={`${warning.code} ${warning.numbers.join()}`}>{warning.sentence}</div>
      ))}
    </Alert>
  );
}
