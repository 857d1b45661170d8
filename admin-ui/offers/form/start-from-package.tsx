import { Box, Button, Typography } from '@mui/material';
import { useGetList } from 'react-admin';
import { Link, useLocation } from 'react-router';
import { moneyText } from '../../format/money.ts';
import type { PackageOffered } from './package-into-form.ts';

type Named = PackageOffered & { seasonName: string };

/** Begins the form anew with the lines and the price of a package; the sponsor that was chosen by another page stays. */
export function StartFromPackage() {
  const { search } = useLocation();
  const { data = [] } = useGetList<Named>('packages', { filter: { isOffered: true }, pagination: { page: 1, perPage: 12 }, sort: { field: 'name', order: 'ASC' } });
  if (data.length === 0) return null;
  const sent = JSON.parse(new URLSearchParams(search).get('source') ?? '{}') as { sponsorId?: string };
  const source = (one: Named) => encodeURIComponent(JSON.stringify({ ...(sent.sponsorId ? { sponsorId: sent.sponsorId } : {}), packageId: one.id, seasonId: one.seasonId }));
  return (
    <Box component="nav" aria-label="Packages" sx={{ display: 'flex', flexWrap: 'wrap', gap: 1, alignItems: 'center', mb: 2 }}>
      <Typography component="span">Begin with a package, or fill in the lines:</Typography>
      {data.map((one) => <Button key={one.id} component={Link} to={`/offers/create?source=${source(one)}`} variant="outlined">{one.name}, {moneyText(one.priceCents)}</Button>)}
    </Box>
  );
}
