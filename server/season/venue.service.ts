import { Inject, Injectable } from '@nestjs/common';
import { In } from 'typeorm';
import { refuse } from '../domain/refusals.ts';
import { UnitOfWork } from '../platform/database/unit-of-work.ts';
import { Conditions, contains, pageOf } from '../platform/http/lists.ts';
import type { Listed } from '../platform/http/lists.ts';
import { Floor } from './floor.entity.ts';
import type { ChangeVenueDto, FloorDto, VenueDto, VenueListQuery, VenueView } from './venue.dto.ts';
import { venueView } from './venue.dto.ts';
import { Venue } from './venue.entity.ts';

const SORTS = { name: 'name collate "und-x-icu"' };

@Injectable()
export class VenueService {
  constructor(@Inject(UnitOfWork) private readonly work: UnitOfWork) {}

  async list(query: VenueListQuery): Promise<Listed<VenueView>> {
    const on = new Conditions('department_id')
      .add('id = any(?::uuid[])', query.id)
      .add('is_ours = ?', query.isOurs)
      .add('name ilike ?', contains(query.q));
    const [count] = await this.work.sql<{ total: number }>(`select count(*) as total from venue where ${on.where}`, on.parameters);
    const page = await this.work.sql<{ id: string }>(`select id from venue where ${on.where} ${pageOf(query, SORTS)}`, on.parameters);
    return { data: await this.views(page.map((row) => row.id)), total: count?.total ?? 0 };
  }

  async one(id: string): Promise<VenueView> {
    const venue = await this.work.one(Venue, id);
    return venueView(venue, await this.work.find(Floor, { venueId: id }, { order: { name: 'ASC' } }));
  }

  async add({ floors, ...form }: VenueDto): Promise<VenueView> {
    const [row] = await this.work.insert(Venue, form);
    await this.keepFloors(row!.id, floors ?? []);
    return this.one(row!.id);
  }

  async change(id: string, version: number, { floors, ...form }: ChangeVenueDto): Promise<VenueView> {
    await this.work.update(Venue, id, version, form);
    if (floors) await this.keepFloors(id, floors);
    return this.one(id);
  }

  /** A floor that a night was held on cannot be taken away; a name is changed by its id. */
  private async keepFloors(venueId: string, wanted: readonly FloorDto[]): Promise<void> {
    const there = await this.work.find(Floor, { venueId });
    const kept = new Set(wanted.flatMap((floor) => (floor.id ? [floor.id] : [])));
    if ([...kept].some((id) => !there.some((floor) => floor.id === id))) refuse('unknown-floor');
    for (const floor of there) if (!kept.has(floor.id)) await this.work.remove(Floor, { id: floor.id });
    for (const { id, name } of wanted) {
      const before = there.find((floor) => floor.id === id);
      if (before && before.name !== name) await this.work.update(Floor, before.id, null, { name });
    }
    await this.work.insert(Floor, wanted.filter((floor) => !floor.id).map(({ name }) => ({ venueId, name })));
  }

  private async views(ids: readonly string[]): Promise<VenueView[]> {
    if (ids.length === 0) return [];
    const venues = await this.work.find(Venue, { id: In([...ids]) });
    const floors = await this.work.find(Floor, { venueId: In([...ids]) }, { order: { name: 'ASC' } });
    return ids.flatMap((id) => venues.filter((venue) => venue.id === id)).map((venue) => venueView(venue, floors));
  }
}
