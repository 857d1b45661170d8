import { Inject, Injectable } from '@nestjs/common';
import type { Role } from '../domain/access/rights.ts';
import { inOrder, planHonoursImport } from '../domain/packet/honours.ts';
import type { WantedHonoured } from '../domain/packet/honours.ts';
import type { ImportPlan } from '../domain/season/import-plan.ts';
import { UnitOfWork } from '../platform/database/unit-of-work.ts';
import { readCsv } from '../season/csv.ts';
import { importView, isConfirmed } from '../season/import-view.ts';
import type { ImportView } from '../season/import.dto.ts';
import type { HonouredStudentView, HonoursImportDto } from './honours-list.dto.ts';
import { HonoursListRow } from './honours-list.entity.ts';
import { HonoursLists } from './honours-list.service.ts';

@Injectable()
export class HonoursImport {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(HonoursLists) private readonly lists: HonoursLists,
  ) {}

  /** Shows what a file of students would do to a list, or does what was shown. */
  async run(id: string, form: HonoursImportDto, roles: readonly Role[]): Promise<ImportView> {
    // Two that import at once would both find the same list; the second waits and then plans anew.
    if (form.confirm !== false) await this.work.lock(HonoursListRow, [(await this.work.one(HonoursListRow, id)).id]);
    const { students: onList } = await this.lists.one(id, roles);
    const file = readCsv(Buffer.from(form.csv, 'utf8'));
    const plan = planHonoursImport(file, { students: await this.lists.ourStudents(), onList, keepMissing: form.keepMissing ?? false });
    const confirmed = isConfirmed([plan], form.confirm);
    if (confirmed) await this.lists.put(id, null, wantedOf(plan, onList, form.keepMissing ?? false), form.schoolId ?? null, roles);
    return importView([plan], confirmed);
  }
}

/** A refused row leaves the student on the list as they were. */
function wantedOf(plan: ImportPlan<WantedHonoured>, onList: readonly HonouredStudentView[], keepsMissing: boolean) {
  const wanted = plan.steps.flatMap((step) => step.wanted ?? []);
  const refused = new Set(plan.steps.flatMap((step) => (step.action === 'refuse' && step.existingId ? [step.existingId] : [])));
  const named = new Set(wanted.map((one) => one.playerId));
  const kept = onList.filter((one) => !named.has(one.playerId) && (keepsMissing || refused.has(one.playerId)));
  return [...inOrder(wanted), ...kept.map(({ playerId, name, sayAs, escorts, line }) => ({ playerId, name, sayAs, escorts, line }))];
}
