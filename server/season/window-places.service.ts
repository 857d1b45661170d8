import { Inject, Injectable } from '@nestjs/common';
import { refuse } from '../domain/refusals.ts';
import type { PlacesSaid } from '../domain/season/sport-profile.ts';
import { UnitOfWork } from '../platform/database/unit-of-work.ts';
import { Conditions, pageOf } from '../platform/http/lists.ts';
import type { Listed } from '../platform/http/lists.ts';
import type { ChangeWindowPlacesDto, WindowPlacesDto, WindowPlacesListQuery, WindowPlacesView } from './window-places.dto.ts';
import { WindowPlaces } from './window-places.entity.ts';

const VIEW = `window_places.id, sport, window_kind as "windowKind", place_group as "placeGroup", places, version`;
const SORTS = { sport: 'sport', windowKind: 'window_kind' };

/** How many reads the department puts into the windows of its sports. */
@Injectable()
export class WindowPlacesService {
  constructor(@Inject(UnitOfWork) private readonly work: UnitOfWork) {}

  async list(query: WindowPlacesListQuery): Promise<Listed<WindowPlacesView>> {
    const on = new Conditions('window_places.department_id').add('window_places.id = any(?::uuid[])', query.id).add('sport = ?', query.sport);
    const [count] = await this.work.sql<{ total: number }>(`select count(*) as total from window_places where ${on.where}`, on.parameters);
    const data = await this.work.sql<WindowPlacesView>(`select ${VIEW} from window_places where ${on.where} ${pageOf(query, SORTS, 'window_places.id')}`, on.parameters);
    return { data, total: count?.total ?? 0 };
  }

  /** What is said of each sport that something is said of. */
  async bySport(): Promise<Map<string, PlacesSaid[]>> {
    const bySport = new Map<string, PlacesSaid[]>();
    for (const one of await this.work.sql<WindowPlacesView>(`select ${VIEW} from window_places where department_id = $1`)) {
      bySport.set(one.sport, [...(bySport.get(one.sport) ?? []), one]);
    }
    return bySport;
  }

  async add(form: WindowPlacesDto): Promise<WindowPlacesView> {
    const [row] = await this.work.insert(WindowPlaces, form);
    return this.one(row!.id);
  }

  async change(id: string, version: number, form: ChangeWindowPlacesDto): Promise<WindowPlacesView> {
    await this.work.update(WindowPlaces, id, version, form);
    return this.one(id);
  }

  /** The window goes by the sport's profile again. */
  async remove(id: string): Promise<void> {
    await this.work.one(WindowPlaces, id);
    await this.work.remove(WindowPlaces, { id });
  }

  private async one(id: string): Promise<WindowPlacesView> {
    const [row] = await this.work.sql<WindowPlacesView>(`select ${VIEW} from window_places where department_id = $1 and id = $2`, [id]);
    return row ?? refuse('not-found');
  }
}
