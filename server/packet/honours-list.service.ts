import { Inject, Injectable } from '@nestjs/common';
import { In, IsNull } from 'typeorm';
import { mayUse } from '../domain/access/rights.ts';
import type { Role } from '../domain/access/rights.ts';
import { wordsToLeaveOut } from '../domain/packet/honours.ts';
import { refuse } from '../domain/refusals.ts';
import { foldedText } from '../domain/season/import-headings.ts';
import { newId } from '../platform/database/ids.ts';
import { UnitOfWork } from '../platform/database/unit-of-work.ts';
import type { Listed } from '../platform/http/lists.ts';
import { Night } from '../season/night.entity.ts';
import { Player } from '../season/player.entity.ts';
import { withoutSilent } from '../season/roster.service.ts';
import { School } from '../season/school.entity.ts';
import type { ChangeHonoursListDto, HonouredStudentDto, HonouredStudentView, HonoursListDto, HonoursListView } from './honours-list.dto.ts';
import { HonouredStudentRow, HonoursListRow } from './honours-list.entity.ts';
import { checkScript } from './script-check.ts';

const STUDENTS = `select honoured_student.honours_list_id as "honoursListId", honoured_student.id, player.id as "playerId", player.name, player.say_as as "sayAs", player.announce,
    honoured_student.place, honoured_student.escorts, honoured_student.line
  from honoured_student join player on player.department_id = $1 and player.id = honoured_student.player_id
  where honoured_student.department_id = $1 and honoured_student.honours_list_id = any($2::uuid[]) order by honoured_student.place`;

type StudentRow = Omit<HonouredStudentView, 'leaveOut'> & { honoursListId: string };

/** Students honored on a night. Their names stand with the players; escorts and line stand here. */
@Injectable()
export class HonoursLists {
  constructor(@Inject(UnitOfWork) private readonly work: UnitOfWork) {}

  async ofNight(nightId: string, roles: readonly Role[]): Promise<Listed<HonoursListView>> {
    await this.work.one(Night, nightId);
    const data = await this.views(await this.work.find(HonoursListRow, { nightId }, { order: { title: 'ASC', id: 'ASC' } }), roles);
    return { data, total: data.length };
  }

  async one(id: string, roles: readonly Role[]): Promise<HonoursListView> {
    return (await this.views([await this.work.one(HonoursListRow, id)], roles))[0]!;
  }

  async add(nightId: string, form: HonoursListDto, roles: readonly Role[]): Promise<HonoursListView> {
    await this.work.one(Night, nightId);
    checkOpening(form.openingText);
    const [row] = await this.work.insert(HonoursListRow, { ...form, nightId, secondsEach: form.secondsEach ?? 20, openingText: form.openingText ?? null });
    return this.one(row!.id, roles);
  }

  async change(id: string, version: number, form: ChangeHonoursListDto, roles: readonly Role[]): Promise<HonoursListView> {
    checkOpening(form.openingText);
    await this.work.update(HonoursListRow, id, version, form);
    return this.one(id, roles);
  }

  async remove(id: string): Promise<void> {
    await this.work.one(HonoursListRow, id);
    await this.work.remove(HonouredStudentRow, { honoursListId: id });
    await this.work.remove(HonoursListRow, { id });
  }

  /** The list as it is to be, in its order. Students who are new become players of the school, announced by name until the family says otherwise. */
  async put(id: string, version: number | null, students: readonly HonouredStudentDto[], schoolId: string | null, roles: readonly Role[]): Promise<HonoursListView> {
    await this.work.one(HonoursListRow, id);
    await this.work.update(HonoursListRow, id, version, {});
    const before = await this.work.find(HonouredStudentRow, { honoursListId: id });
    const playerIds = await this.players(students, schoolId, before.map((row) => row.playerId));
    if (new Set(playerIds).size < playerIds.length) refuse('honoured-already');
    await this.work.remove(HonouredStudentRow, { honoursListId: id });
    await this.work.insert(HonouredStudentRow, students.map(({ escorts, line }, index) => {
      const playerId = playerIds[index]!;
      return { id: before.find((row) => row.playerId === playerId)?.id ?? newId(), honoursListId: id, playerId, place: index + 1, escorts: escorts ?? null, line: line ?? null };
    }));
    return this.one(id, roles);
  }

  /** What was written beside a student whose name is erased goes too. */
  async forget(playerId: string): Promise<void> {
    const rows = await this.work.find(HonouredStudentRow, { playerId });
    for (const row of rows) await this.work.update(HonouredStudentRow, row.id, null, { escorts: null, line: null });
  }

  /** Players of our schools whose names were not erased. */
  async ourStudents(): Promise<Player[]> {
    const schools = await this.work.find(School, { isOurs: true });
    return this.work.find(Player, { schoolId: In(schools.map((school) => school.id)), erasedAt: IsNull() }, { order: { id: 'ASC' } });
  }

  private async players(students: readonly HonouredStudentDto[], schoolId: string | null, onList: readonly string[]): Promise<string[]> {
    const ours = await this.ourStudents();
    const added: Partial<Player>[] = [];
    const ids = students.map(({ playerId, name }) => {
      // An erased student stays on a list they were on.
      if (playerId) return onList.includes(playerId) ? playerId : (ours.find((player) => player.id === playerId) ?? refuse('unknown-player')).id;
      const known = ours.filter((player) => foldedText(player.name) === foldedText(name));
      if (known.length > 1) refuse('import-student-unclear', { name });
      return known[0]?.id ?? null;
    });
    const whole: string[] = [];
    for (const [index, id] of ids.entries()) {
      if (id === null) added.push({ id: newId(), schoolId: await this.schoolOf(schoolId), name: students[index]!.name, sayAs: students[index]!.sayAs ?? null, announce: 'name' });
      whole.push(id ?? added.at(-1)!.id!);
    }
    await this.work.insert(Player, added);
    return whole;
  }

  private async schoolOf(schoolId: string | null): Promise<string> {
    const ours = await this.work.find(School, { isOurs: true });
    if (schoolId !== null) return ours.find((school) => school.id === schoolId)?.id ?? refuse('honours-not-ours');
    return ours.length === 1 ? ours[0]!.id : refuse('honours-school-unclear');
  }

  private async views(lists: readonly HonoursListRow[], roles: readonly Role[]): Promise<HonoursListView[]> {
    const rows = await this.work.sql<StudentRow>(STUDENTS, [lists.map((list) => list.id)]);
    const showsSilent = mayUse(roles, 'change students');
    return lists.map(({ departmentId: _, ...list }) => {
      const students = rows.filter((row) => row.honoursListId === list.id).map(({ honoursListId: __, ...row }) => studentView(row, showsSilent));
      return { ...list, students, secondsInAll: students.length * list.secondsEach };
    });
  }
}

/** Escorts and line tell who a student is, so they follow the family's choice too. */
function studentView(row: Omit<StudentRow, 'honoursListId'>, showsSilent: boolean): HonouredStudentView {
  const leaveOut = wordsToLeaveOut(`${row.escorts ?? ''} ${row.line ?? ''}`);
  if (showsSilent || row.announce === 'name') return { ...row, leaveOut };
  return { ...withoutSilent(row), escorts: null, line: null, leaveOut: [] };
}

function checkOpening(text: string | null | undefined): void {
  const [first] = text ? checkScript(text, 'honours').problems : [];
  if (first) refuse('script-broken', { reason: first.sentence }, { openingText: `cannot be filled in: ${first.line === null ? '' : `line ${first.line}: `}${first.sentence}` });
}
