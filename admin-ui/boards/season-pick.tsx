import { Box } from '@mui/material';
import { useGetList } from 'react-admin';
import { Pick } from '../books/pickers.tsx';
import type { Season } from '../seasons/types.ts';

/** Of which season a board is; without a choice the server takes the one that is on, else the nearest. */
export function SeasonPick({ value, onChange }: { value: string | null | undefined; onChange: (seasonId: string) => void }) {
  const { data: seasons } = useGetList<Season>('seasons', { pagination: { page: 1, perPage: 50 }, sort: { field: 'startsOn', order: 'DESC' } });
  if (!seasons || seasons.length === 0 || !value) return null;
  return <Box><Pick label="Season" value={value} choices={seasons.map(({ id, name }) => ({ id, name }))} onChange={onChange} /></Box>;
}
