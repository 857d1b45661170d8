import { Inject, Injectable } from '@nestjs/common';
import { refuse } from '../../domain/refusals.ts';
import { newId } from '../../platform/database/ids.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { NightLog } from '../log/night-log.service.ts';
import type { AttendanceDto, NightAttendance, NightAttendanceView, RecordedAttendance } from './night-attendance.dto.ts';

const LAST = `select distinct on (night_id) night_id as "nightId", attendance, how from night_attendance
  where department_id = $1 and night_id = any($2::uuid[]) order by night_id, recorded_at desc, id desc`;

const AT_SIGN_OFF = `select night_id as "nightId", attendance, 'signOff' as how from sign_off
  where department_id = $1 and night_id = any($2::uuid[]) and attendance is not null`;

const RECORDS = `select attendance, how, recorded_at as at, person.name as "byName" from night_attendance
    left join person on person.id = night_attendance.recorded_by_person_id where night_attendance.department_id = $1 and night_id = $2
  union all
  select attendance, 'signOff', recorded_at, coalesce(signed_off_by_name, person.name) from sign_off
    left join person on person.id = sign_off.signed_off_by_person_id where sign_off.department_id = $1 and night_id = $2 and attendance is not null
  order by at desc`;

type OfNight = NightAttendance & { nightId: string };

/** How many came. The sign-off may say it; what is recorded later goes before that, and the last of it holds. */
@Injectable()
export class NightAttendances {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(NightLog) private readonly log: NightLog,
  ) {}

  /** A night that nobody counted is not in the answer, or is in it with nulls where the count was taken back. */
  async ofNights(nightIds: readonly string[]): Promise<Map<string, NightAttendance>> {
    if (nightIds.length === 0) return new Map();
    const rows = [...(await this.work.sql<OfNight>(AT_SIGN_OFF, [nightIds])), ...(await this.work.sql<OfNight>(LAST, [nightIds]))];
    return new Map(rows.map(({ nightId, attendance, how }) => [nightId, { attendance, how }]));
  }

  async show(nightId: string): Promise<NightAttendanceView> {
    const { id } = await this.log.night(nightId);
    const records = await this.work.sql<RecordedAttendance>(RECORDS, [id]);
    return { nightId: id, attendance: records[0]?.attendance ?? null, how: records[0]?.how ?? null, records };
  }

  /** @throws Refused `night-not-signed-off`, `attendance-incomplete` */
  async record(nightId: string, { attendance, how = null }: AttendanceDto): Promise<NightAttendanceView> {
    const night = await this.log.lock(nightId);
    if (!night.isSignedOff) refuse('night-not-signed-off');
    if ((attendance === null) !== (how === null)) refuse('attendance-incomplete', {}, { how: attendance === null ? 'is left out where nobody knows' : 'is missing' });
    const before = await this.show(night.id);
    if (before.attendance === attendance && before.how === how) return before;
    await this.work.add('night_attendance', [{ id: newId(), nightId: night.id, attendance, how, recordedByPersonId: this.work.personId }]);
    return this.show(night.id);
  }
}
