import { createHash } from 'node:crypto';
import { Inject, Injectable } from '@nestjs/common';
import { DepartmentService } from '../access/department.service.ts';
import { LIBRARY_TO_START_WITH } from '../domain/packet/default-scripts.ts';
import { MOMENTS } from '../domain/packet/script.ts';
import type { Moment, Script } from '../domain/packet/script.ts';
import { EXAMPLE_VARIABLES } from '../domain/packet/script-variables.ts';
import { refuse } from '../domain/refusals.ts';
import { UnitOfWork } from '../platform/database/unit-of-work.ts';
import type { Listed } from '../platform/http/lists.ts';
import { fillIn } from './liquid.ts';
import type { ChangeScriptDto, ScriptDto, ScriptListQuery, ScriptView } from './script.dto.ts';
import { scriptView } from './script.dto.ts';
import { ScriptRow } from './script.entity.ts';

/**
 * The department's scripts. A moment for which nothing is stored is read by the scripts every department
 * starts with; they are stored, all of that moment, when one of them is first changed.
 */
@Injectable()
export class ScriptService {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(DepartmentService) private readonly departments: DepartmentService,
  ) {}

  /** The library as packets use it: of one sport, or for every sport. */
  async library(): Promise<{ sport: string | null; script: Script }[]> {
    return (await this.all()).map(({ id, sport, moment, title, language, text, variant, secondLanguage, secondText, isOn, place, isDefault }) => {
      const known = isDefault ? this.defaults().find((row) => row.id === id)?.key : undefined;
      return { sport, script: { key: known ?? keyOf(moment, title, id), scriptId: id, moment, title, language, text, variant, secondLanguage, secondText, isOn, place } };
    });
  }

  async list(query: ScriptListQuery): Promise<Listed<ScriptView>> {
    const words = query.q?.toLowerCase();
    const found = (await this.all()).filter(
      (script) =>
        (query.id === undefined || query.id.includes(script.id)) &&
        (query.moment === undefined || script.moment === query.moment) &&
        (query.language === undefined || script.language === query.language) &&
        (query.isOn === undefined || script.isOn === query.isOn) &&
        (words === undefined || `${script.title} ${script.text}`.toLowerCase().includes(words)),
    );
    const sorted = sortedBy(found, query.sort);
    const perPage = query.perPage ?? 25;
    const from = ((query.page ?? 1) - 1) * perPage;
    return { data: sorted.slice(from, from + perPage), total: found.length };
  }

  async one(id: string): Promise<ScriptView> {
    return (await this.all()).find((script) => script.id === id) ?? refuse('not-found');
  }

  async add(form: ScriptDto): Promise<ScriptView> {
    checkWords(form.text);
    await this.store(form.moment);
    const [row] = await this.work.insert(ScriptRow, { ...form, language: form.language ?? 'en', isOn: form.isOn ?? true, place: form.place ?? 1 });
    return this.one(row!.id);
  }

  async change(id: string, version: number, form: ChangeScriptDto): Promise<ScriptView> {
    if (form.text !== undefined) checkWords(form.text);
    const script = await this.one(id);
    if (script.isDefault) await this.store(script.moment);
    if (form.moment !== undefined && form.moment !== script.moment) await this.store(form.moment);
    await this.work.update(ScriptRow, id, version, form);
    return this.one(id);
  }

  /** Takes a script out; the last one of a moment gives way to the words every department starts with. */
  async remove(id: string): Promise<void> {
    const script = await this.one(id);
    if (script.isDefault) refuse('script-is-the-default');
    await this.work.remove(ScriptRow, { id });
  }

  private async all(): Promise<ScriptView[]> {
    const { settings } = await this.departments.here();
    const rows = await this.work.find(ScriptRow);
    const stored = new Set(rows.map((row) => row.moment));
    const defaults = this.defaults()
      .filter((row) => !stored.has(row.moment))
      .map(({ key: _, ...row }) => scriptView({ ...row, isOn: row.isOn || (row.moment === 'prayer' && settings.prayerOn) }, true));
    return sortedBy([...rows.map((row) => scriptView(row, false)), ...defaults], undefined);
  }

  private async store(moment: Moment): Promise<void> {
    const there = await this.work.count(ScriptRow, { moment });
    if (there > 0) return;
    const rows = this.defaults().filter((row) => row.moment === moment);
    await this.work.insert(ScriptRow, rows.map(({ key: _, departmentId: __, ...row }) => row));
  }

  /** The same id for the same department and script, so that a default can be opened before it is stored. */
  private defaults(): (ScriptRow & { key: string })[] {
    const { departmentId } = this.work;
    return LIBRARY_TO_START_WITH.map((script) => ({
      departmentId,
      id: idOf(departmentId, script.key),
      key: script.key,
      moment: script.moment,
      sport: script.sport,
      language: script.language,
      title: script.title,
      text: script.text,
      variant: script.variant ?? null,
      secondLanguage: null,
      secondText: null,
      wordsNumber: 1,
      approvedOn: null,
      approvedByName: null,
      isOn: script.isOn,
      place: script.place,
      version: 1,
    }));
  }
}

/** @source RFC 9562 section 5.8: version 8, what stands in it is our own affair */
function idOf(departmentId: string, key: string): string {
  const digest = createHash('sha256').update(`${departmentId} script ${key}`).digest('hex');
  return `${digest.slice(0, 8)}-${digest.slice(8, 12)}-8${digest.slice(13, 16)}-a${digest.slice(17, 20)}-${digest.slice(20, 32)}`;
}

/** Two scripts of one moment need two keys; the anthem's tell which of them is sung. */
function keyOf(moment: Moment, title: string, id: string): string {
  if (moment !== 'anthem') return `${moment}-${id}`;
  return /\bsung\b/i.test(title) ? `anthem-sung-${id}` : /\bplayed\b/i.test(title) ? `anthem-played-${id}` : `anthem-${id}`;
}

function checkWords(text: string): void {
  try {
    fillIn(text, EXAMPLE_VARIABLES);
  } catch (failure) {
    const reason = (failure as Error).message;
    refuse('script-broken', { reason }, { text: `cannot be filled in: ${reason}` });
  }
}

function sortedBy(scripts: readonly ScriptView[], sort: string | undefined): ScriptView[] {
  const turned = sort?.startsWith('-') ? -1 : 1;
  const field = sort?.replace(/^-/, '');
  const order = (a: ScriptView, b: ScriptView): number => MOMENTS.indexOf(a.moment) - MOMENTS.indexOf(b.moment) || a.place - b.place;
  const tie = (a: ScriptView, b: ScriptView): number => (a.id < b.id ? -1 : 1);
  if (field === 'title') return scripts.toSorted((a, b) => turned * a.title.localeCompare(b.title) || tie(a, b));
  return scripts.toSorted((a, b) => turned * order(a, b) || tie(a, b));
}
