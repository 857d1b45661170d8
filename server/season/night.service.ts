import { Inject, Injectable } from '@nestjs/common';
import { refuse } from '../domain/refusals.ts';
import { minutesOfClock } from '../domain/season/night.ts';
import { isId } from '../platform/database/ids.ts';
import { UnitOfWork } from '../platform/database/unit-of-work.ts';
import { Conditions, contains, pageOf } from '../platform/http/lists.ts';
import type { Listed } from '../platform/http/lists.ts';
import { Floor } from './floor.entity.ts';
import { GameNights } from './game-nights.service.ts';
import { GameReader } from './game-reader.service.ts';
import type { GameView } from './game.dto.ts';
import type { ChangeNightDto, NightListQuery, NightView, PersonOfNightDto } from './night.dto.ts';
import { Night } from './night.entity.ts';
import { PersonOfNight } from './person-of-night.entity.ts';
import { Venue } from './venue.entity.ts';

const IS_SIGNED_OFF = 'exists (select 1 from sign_off where sign_off.department_id = $1 and sign_off.night_id = night.id)';
const VIEW = `night.id, night.held_on as "heldOn", night.venue_id as "venueId", venue.name as "venueName", night.floor_id as "floorId", floor.name as "floorName",
  night.title as "ownTitle", night.doors_at as "doorsAt", night.note,
  night.anthem_form as "anthemForm", night.flag_form as "flagForm", night.halftime_seconds as "halftimeSeconds", night.version,
  case when ${IS_SIGNED_OFF} then 'signedOff' else 'open' end as state,
  (select max(number) from packet_issue where packet_issue.department_id = $1 and packet_issue.night_id = night.id) as "packetIssued",
  (select count(*) from placement where placement.department_id = $1 and placement.night_id = night.id) as "placementCount",
  array(select game_id from game_night where game_night.department_id = $1 and game_night.night_id = night.id)::uuid[] as "gameIds"`;
const FROM = `night join venue on venue.department_id = night.department_id and venue.id = night.venue_id
  left join floor on floor.department_id = night.department_id and floor.id = night.floor_id`;
const SORTS = { heldOn: 'night.held_on', venueName: 'venue.name collate "und-x-icu"', title: 'night.title collate "und-x-icu"', doorsAt: 'night.doors_at' };

type Row = Omit<NightView, 'title' | 'games' | 'packetOutOfDate' | 'packetBecause' | 'readiness' | 'people'> & { gameIds: string[] };

@Injectable()
export class NightService {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(GameReader) private readonly games: GameReader,
    @Inject(GameNights) private readonly nights: GameNights,
  ) {}

  async list(query: NightListQuery): Promise<Listed<NightView>> {
    const on = new Conditions('night.department_id')
      .add('night.id = any(?::uuid[])', query.id)
      .add('night.held_on >= ?', query.from)
      .add('night.held_on <= ?', query.to)
      .add('night.venue_id = ?', query.venueId)
      .when(query.state === 'open', `not ${IS_SIGNED_OFF}`)
      .when(query.state === 'signedOff', IS_SIGNED_OFF)
      .add('(night.title ilike ? or venue.name ilike ?)', contains(query.q));
    const [count] = await this.work.sql<{ total: number }>(`select count(*) as total from ${FROM} where ${on.where}`, on.parameters);
    const rows = await this.work.sql<Row>(`select ${VIEW} from ${FROM} where ${on.where} ${pageOf(query, SORTS, 'night.held_on, night.id')}`, on.parameters);
    return { data: await this.views(rows), total: count?.total ?? 0 };
  }

  async one(id: string): Promise<NightView> {
    const rows = isId(id) ? await this.work.sql<Row>(`select ${VIEW} from ${FROM} where night.department_id = $1 and night.id = $2`, [id]) : [];
    const [view] = await this.views(rows);
    if (!view) return refuse('not-found');
    const people = await this.work.find(PersonOfNight, { nightId: id }, { order: { id: 'ASC' } });
    return { ...view, people: people.map(({ departmentId: _, nightId: __, version: ___, ...person }) => person) };
  }

  async change(id: string, version: number, form: ChangeNightDto): Promise<NightView> {
    const night = await this.work.one(Night, id);
    const venueId = form.venueId ?? night.venueId;
    const changesVenue = venueId !== night.venueId;
    const floorId = form.floorId === undefined ? (changesVenue ? null : night.floorId) : form.floorId;
    if (changesVenue) await this.nights.refuseSignedOff([id]);
    if (changesVenue && !(await this.work.first(Venue, { id: venueId }))) refuse('unknown-venue');
    if (floorId !== null && !(await this.work.first(Floor, { id: floorId, venueId }))) refuse('unknown-floor');
    await this.work.update(Night, id, version, { ...form, floorId });
    return this.one(id);
  }

  async putPeople(id: string, version: number, people: readonly PersonOfNightDto[]): Promise<NightView> {
    await this.work.one(Night, id);
    await this.refuseStrangers(people.flatMap(({ personId }) => personId ?? []));
    await this.work.update(Night, id, version, {});
    await this.work.remove(PersonOfNight, { nightId: id });
    await this.work.insert(PersonOfNight, people.map((person) => ({ ...person, nightId: id })));
    return this.one(id);
  }

  private async refuseStrangers(personIds: readonly string[]): Promise<void> {
    if (personIds.length === 0) return;
    const wanted = [...new Set(personIds)];
    const [here] = await this.work.sql<{ total: number }>('select count(*) as total from membership where department_id = $1 and person_id = any($2::uuid[])', [wanted]);
    if (Number(here?.total ?? 0) < wanted.length) refuse('unknown-person');
  }

  private async views(rows: readonly Row[]): Promise<NightView[]> {
    const games = await this.games.byIds(rows.flatMap((row) => row.gameIds));
    return rows.map(({ gameIds, ...row }) => {
      const ofNight = inOrder(games.filter((game) => gameIds.includes(game.id)));
      return {
        ...row,
        title: row.ownTitle ?? titleOf(ofNight, row.venueName),
        games: ofNight.map(({ id, label, level, startsAtShown, status }) => ({ id, label, level, startsAtShown, status })),
        packetOutOfDate: null,
        packetBecause: null,
        readiness: null,
      };
    });
  }
}

/** By expected start; a game nobody knows the hour of comes last. */
function inOrder(games: readonly GameView[]): GameView[] {
  const minutes = (game: GameView): number => (game.startsClock === null ? 2880 : minutesOfClock(game.startsClock));
  return games.toSorted((a, b) => minutes(a) - minutes(b));
}

/** The varsity game is what the night is for; else the last one. */
function titleOf(games: readonly GameView[], venueName: string): string {
  const held = games.filter((game) => game.status !== 'cancelled' && game.status !== 'postponed');
  const main = held.find((game) => game.level === 'varsity') ?? held.at(-1) ?? games.at(-1);
  return main?.label ?? venueName;
}
