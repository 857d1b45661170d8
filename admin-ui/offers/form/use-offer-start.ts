import { useGetList, useGetOne } from 'react-admin';
import { useLocation } from 'react-router';
import type { Seller } from '../../sellers/types.ts';
import type { Season } from '../../seasons/types.ts';
import { offerIntoForm } from './from-form.ts';
import { packageIntoForm, type PackageOffered } from './package-into-form.ts';

type Fields = Record<string, unknown>;

/** What other pages send along: fields of an offer, its read lines and benefit lines among them. */
function sentAlong(location: { state: unknown; search: string }): Fields {
  const record = (location.state as { record?: Fields } | null)?.record;
  if (record) return record;
  const source = new URLSearchParams(location.search).get('source');
  try {
    return source ? (JSON.parse(source) as Fields) : {};
  } catch {
    return {};
  }
}

/** What a new offer begins with; null while that is still asked for. */
export function useOfferStart(): Fields | null {
  const sent = sentAlong(useLocation());
  const packageId = typeof sent['packageId'] === 'string' ? sent['packageId'] : undefined;
  const { data: offered, isPending: packageWaits } = useGetOne<PackageOffered>('packages', { id: packageId ?? '' }, { enabled: packageId !== undefined, retry: false });
  const { data: seasons, isPending: seasonsWait } = useGetList<Season>('seasons', { pagination: { page: 1, perPage: 1 }, sort: { field: 'startsOn', order: 'DESC' } });
  const { data: sellers, isPending: sellersWait } = useGetList<Seller>('sellers', { pagination: { page: 1, perPage: 2 }, sort: { field: 'name', order: 'ASC' } });
  const seasonId = (sent['seasonId'] ?? offered?.seasonId ?? seasons?.[0]?.id) as string | undefined;
  const { data: season, isPending: seasonWaits } = useGetOne<Season>('seasons', { id: seasonId ?? '' }, { enabled: seasonId !== undefined });
  if ((packageId !== undefined && packageWaits) || seasonsWait || sellersWait || (seasonId !== undefined && seasonWaits)) return null;
  return offerIntoForm({
    ...(sellers?.length === 1 ? { sellerId: sellers[0]!.id } : {}),
    ...(season ? { seasonId: season.id, startsOn: season.startsOn, endsOn: season.endsOn, billingPlan: { kind: 'inFull', on: season.startsOn } } : {}),
    pricing: 'fixed',
    ...(offered ? packageIntoForm(offered) : {}),
    ...sent,
  });
}
