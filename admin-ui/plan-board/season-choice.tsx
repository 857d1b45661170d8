import { TextField } from '@mui/material';
import { useGetList } from 'react-admin';
import { today } from '../format/day.ts';
import type { Season } from '../seasons/types.ts';

/** The season that is asked for, else the present one: under way, else the next to begin, else the last. */
export function useSeason(asked: string | undefined): { seasons: Season[]; seasonId: string | null; isRead: boolean } {
  const { data, isPending } = useGetList<Season>('seasons', { pagination: { page: 1, perPage: 100 }, sort: { field: 'startsOn', order: 'ASC' } });
  const seasons = data ?? [];
  const now = today();
  const present = seasons.find((season) => season.startsOn <= now && season.endsOn >= now) ?? seasons.find((season) => season.startsOn > now) ?? seasons.at(-1);
  const known = seasons.find((season) => season.id === asked);
  return { seasons, seasonId: (known ?? present)?.id ?? null, isRead: !isPending };
}

export function SeasonChoice({ seasons, seasonId, onChange }: { seasons: readonly Season[]; seasonId: string; onChange: (seasonId: string) => void }) {
  return (
    <TextField select label="Season" value={seasonId} onChange={(event) => onChange(event.target.value)} sx={{ width: { xs: '100%', sm: 240 } }} slotProps={{ select: { native: true } }}>
      {seasons.map((season) => <option key={season.id} value={season.id}>{season.name}</option>)}
    </TextField>
  );
}
