import { Inject, Injectable } from '@nestjs/common';
import { refuse } from '../domain/refusals.ts';
import { isId } from '../platform/database/ids.ts';
import { UnitOfWork } from '../platform/database/unit-of-work.ts';
import { Conditions, contains, pageOf } from '../platform/http/lists.ts';
import type { Listed } from '../platform/http/lists.ts';
import type { ChangeReadKindDto, ReadKindDto, ReadKindListQuery, ReadKindView } from './read-kind.dto.ts';
import { ReadKind } from './read-kind.entity.ts';

const VIEW = `read_kind.id, read_kind.name, read_kind.timing, read_kind.windows, read_kind.default_seconds as "defaultSeconds",
  read_kind.sponsors_per_game as "sponsorsPerGame", read_kind.occurrence, read_kind.presents, read_kind.place_group as "placeGroup", read_kind.version,
  (select coalesce(jsonb_agg(jsonb_build_object('seasonId', line.season_id, 'priceCents', line.price_cents)), '[]')
     from rate_card_line as line where line.department_id = $1 and line.read_kind_id = read_kind.id) as rates`;
const SORTS = { name: 'name collate "und-x-icu"', timing: 'timing', defaultSeconds: 'default_seconds' };

type Row = Omit<ReadKindView, 'rateCents'>;

@Injectable()
export class ReadKindService {
  constructor(@Inject(UnitOfWork) private readonly work: UnitOfWork) {}

  async list(query: ReadKindListQuery): Promise<Listed<ReadKindView>> {
    const on = new Conditions('read_kind.department_id')
      .add('read_kind.id = any(?::uuid[])', query.id)
      .add('read_kind.timing = ?', query.timing)
      .add('read_kind.name ilike ?', contains(query.q));
    const [count] = await this.work.sql<{ total: number }>(`select count(*) as total from read_kind where ${on.where}`, on.parameters);
    const rows = await this.work.sql<Row>(`select ${VIEW} from read_kind where ${on.where} ${pageOf(query, SORTS)}`, on.parameters);
    return { data: rows.map((row) => withRate(row, query.seasonId)), total: count?.total ?? 0 };
  }

  async one(id: string): Promise<ReadKindView> {
    if (!isId(id)) return refuse('not-found');
    const [row] = await this.work.sql<Row>(`select ${VIEW} from read_kind where read_kind.department_id = $1 and read_kind.id = $2`, [id]);
    return row ? withRate(row) : refuse('not-found');
  }

  async add(form: ReadKindDto): Promise<ReadKindView> {
    const [row] = await this.work.insert(ReadKind, form);
    return this.one(row!.id);
  }

  async change(id: string, version: number, form: ChangeReadKindDto): Promise<ReadKindView> {
    await this.work.update(ReadKind, id, version, form);
    return this.one(id);
  }
}

function withRate(row: Row, seasonId?: string): ReadKindView {
  return { ...row, rateCents: row.rates.find((rate) => rate.seasonId === seasonId)?.priceCents ?? null };
}
