import { Inject, Injectable } from '@nestjs/common';
import { newId } from '../platform/database/ids.ts';
import { UnitOfWork } from '../platform/database/unit-of-work.ts';
import type { ScriptVersionView, ScriptView } from './script.dto.ts';

const VERSIONS = `select version.number, version.title, version.language, version.text, version.second_language as "secondLanguage",
    version.second_text as "secondText", version.recorded_at as "recordedAt", person.name as "recordedByName"
  from script_version version left join person on person.id = version.recorded_by_person_id
  where version.department_id = $1 and version.script_id = $2 order by version.number desc`;

const LATEST = `select script_id as "scriptId", max(number)::int as number from script_version
  where department_id = $1 and script_id = any($2::uuid[]) group by script_id`;

/** Each wording a script ever had, under its number. */
@Injectable()
export class ScriptWordings {
  constructor(@Inject(UnitOfWork) private readonly work: UnitOfWork) {}

  /** Keeps the script's present words under their number; where they are kept already, nothing happens. */
  async keep(script: ScriptView): Promise<void> {
    const there = await this.work.sql('select 1 from script_version where department_id = $1 and script_id = $2 and number = $3', [script.id, script.wordsNumber]);
    if (there.length > 0) return;
    const { id: scriptId, wordsNumber: number, title, language, text, secondLanguage, secondText, cameAs } = script;
    const recordedByPersonId = cameAs !== null && number === 1 ? null : this.work.scope.personId;
    await this.work.add('script_version', [{ id: newId(), scriptId, number, title, language, text, secondLanguage, secondText, recordedByPersonId }]);
  }

  async list(scriptId: string): Promise<ScriptVersionView[]> {
    return this.work.sql<ScriptVersionView>(VERSIONS, [scriptId]);
  }

  /** The number the next wording of each script has; none for a script of which nothing is kept. */
  async next(scriptIds: readonly string[]): Promise<ReadonlyMap<string, number>> {
    const rows = await this.work.sql<{ scriptId: string; number: number }>(LATEST, [scriptIds]);
    return new Map(rows.map(({ scriptId, number }) => [scriptId, number + 1]));
  }
}
