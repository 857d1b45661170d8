import { Inject, Injectable } from '@nestjs/common';
import { DepartmentService } from '../access/department.service.ts';
import { isLocked, MOMENTS, VARIANTS } from '../domain/packet/script.ts';
import type { Moment, Script } from '../domain/packet/script.ts';
import { refuse } from '../domain/refusals.ts';
import { UnitOfWork } from '../platform/database/unit-of-work.ts';
import type { Listed } from '../platform/http/lists.ts';
import { checkScript } from './script-check.ts';
import { defaultRows, keyOf } from './script-defaults.ts';
import type { DefaultRow } from './script-defaults.ts';
import type { ChangeScriptDto, ScriptDto, ScriptListQuery, ScriptView } from './script.dto.ts';
import { scriptView } from './script.dto.ts';
import { ScriptRow } from './script.entity.ts';
import { ScriptWordings } from './script-wordings.service.ts';

/**
 * The department's scripts. A moment for which nothing is stored is read by the scripts every department
 * starts with; they are stored, all of that moment, when one of them is first changed.
 */
@Injectable()
export class ScriptService {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(DepartmentService) private readonly departments: DepartmentService,
    @Inject(ScriptWordings) private readonly wordings: ScriptWordings,
  ) {}

  /** The library as packets use it: of one sport, or for every sport. */
  async library(): Promise<{ sport: string | null; script: Script }[]> {
    const keys = new Map(this.defaults().map(({ id, key }) => [id, key]));
    return (await this.all()).map((view) => {
      const { id, sport, moment, title, language, text, variant, secondLanguage, secondText, isOn, place } = view;
      return { sport, script: { key: keyOf(view, keys), scriptId: id, moment, title, language, text, variant, secondLanguage, secondText, isOn, place } };
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
        (words === undefined || `${script.title} ${script.text} ${script.secondText ?? ''}`.toLowerCase().includes(words)),
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
    const isOn = form.isOn ?? form.moment !== 'prayer';
    const wanted = { sport: null, variant: null, language: 'en' as const, secondLanguage: null, secondText: null, place: 1, ...form, isOn };
    await this.check(wanted, true);
    await this.store(form.moment);
    const [row] = await this.work.insert(ScriptRow, wanted);
    const script = await this.one(row!.id);
    await this.wordings.keep(script);
    return script;
  }

  /** @throws Refused `stale-version` where somebody changed the script since */
  async change(id: string, version: number, form: ChangeScriptDto): Promise<ScriptView> {
    const before = await this.stored(id);
    const wanted = { ...before, ...withoutHalf(form) };
    const changesWords = WORDS.some((field) => wanted[field] !== before[field]);
    await this.check(wanted, changesWords || wanted.moment !== before.moment);
    if (wanted.moment !== before.moment) await this.store(wanted.moment);
    if (changesWords) await this.wordings.keep(before);
    const { moment, sport, variant, language, title, text, secondLanguage, secondText, isOn, place } = wanted;
    const changes = { moment, sport, variant, language, title, text, secondLanguage, secondText, isOn, place };
    await this.work.update(ScriptRow, id, version, changesWords ? { ...changes, wordsNumber: before.wordsNumber + 1, approvedOn: null, approvedByName: null } : changes);
    const after = await this.one(id);
    if (changesWords) await this.wordings.keep(after);
    return after;
  }

  /** Takes a script out; the last one of a moment gives way to the words every department starts with. */
  async remove(id: string): Promise<void> {
    const script = await this.one(id);
    if (isLocked(script.moment)) refuse('script-locked');
    if (script.isDefault) refuse('script-is-the-default');
    await this.work.remove(ScriptRow, { id });
  }

  /** The script as a row of its own; what the department starts with is stored, all of that moment. @throws Refused `script-locked` */
  async stored(id: string): Promise<ScriptView> {
    const script = await this.one(id);
    if (script.isLocked) refuse('script-locked');
    if (!script.isDefault) return script;
    await this.store(script.moment);
    return this.one(id);
  }

  private async store(moment: Moment): Promise<void> {
    if ((await this.work.count(ScriptRow, { moment })) > 0) return;
    const rows = this.defaults().filter((row) => row.moment === moment);
    const next = await this.wordings.next(rows.map((row) => row.id));
    const { settings } = await this.departments.here();
    await this.work.insert(ScriptRow, rows.map(({ key: _, departmentId: __, ...row }) => ({ ...row, isOn: isOnAtFirst(row, settings.prayerOn), wordsNumber: next.get(row.id) ?? 1 })));
  }

  private async check(wanted: Wanted, checksWords: boolean): Promise<void> {
    if (isLocked(wanted.moment)) refuse('script-locked');
    if (wanted.variant !== null && !(VARIANTS[wanted.moment] ?? []).includes(wanted.variant)) refuse('script-variant-unknown');
    if ((wanted.secondLanguage === null) !== (wanted.secondText === null)) refuse('second-text-incomplete');
    if (wanted.secondLanguage === wanted.language) refuse('second-language-is-the-first');
    if (wanted.moment === 'prayer' && wanted.isOn && !(await this.departments.here()).settings.prayerOn) refuse('script-prayer-off');
    if (checksWords) checkWords(wanted);
  }

  private async all(): Promise<ScriptView[]> {
    const { settings } = await this.departments.here();
    // The district's own words are the venue's; what an older library kept of them is not read.
    const rows = (await this.work.find(ScriptRow)).filter((row) => !isLocked(row.moment));
    const stored = new Set(rows.map((row) => row.moment));
    const keys = new Map(this.defaults().map(({ id, key }) => [id, key]));
    const more = (row: ScriptRow, isDefault: boolean) => ({ isDefault, isLocked: isLocked(row.moment), cameAs: keys.get(row.id) ?? null });
    const defaults = this.defaults()
      .filter((row) => !stored.has(row.moment))
      .map(({ key: _, ...row }) => scriptView({ ...row, isOn: isOnAtFirst(row, settings.prayerOn) }, more(row, true)));
    return sortedBy([...rows.map((row) => scriptView(row, more(row, false))), ...defaults], undefined);
  }

  private defaults(): DefaultRow[] {
    return defaultRows(this.work.departmentId);
  }
}

/** The prayer every department starts with follows the department's own setting. */
function isOnAtFirst(row: Pick<ScriptRow, 'isOn' | 'moment'>, prayerOn: boolean): boolean {
  return row.isOn || (row.moment === 'prayer' && prayerOn);
}

const WORDS = ['text', 'language', 'secondText', 'secondLanguage'] as const;
type Wanted = Pick<ScriptView, 'moment' | 'variant' | 'language' | 'text' | 'secondLanguage' | 'secondText' | 'isOn'>;

/** A form that empties one half of the second text empties the other. */
function withoutHalf(form: ChangeScriptDto): ChangeScriptDto {
  const given = Object.fromEntries(Object.entries(form).filter(([, value]) => value !== undefined)) as ChangeScriptDto;
  return given.secondText === null || given.secondLanguage === null ? { ...given, secondText: null, secondLanguage: null } : given;
}

function checkWords({ text, secondText, moment }: Wanted): void {
  const found = Object.entries({ text, secondText }).flatMap(([field, words]) => {
    const lines = words === null ? [] : checkScript(words, moment).problems.map(({ line, sentence }) => (line === null ? sentence : `line ${line}: ${sentence}`));
    return lines.length > 0 ? [[field, lines.join('; ')] as const] : [];
  });
  if (found.length > 0) refuse('script-broken', { reason: found[0]![1] }, Object.fromEntries(found.map(([field, words]) => [field, `cannot be filled in: ${words}`])));
}

function sortedBy(scripts: readonly ScriptView[], sort: string | undefined): ScriptView[] {
  const turned = sort?.startsWith('-') ? -1 : 1;
  const field = sort?.replace(/^-/, '');
  const order = (a: ScriptView, b: ScriptView): number => MOMENTS.indexOf(a.moment) - MOMENTS.indexOf(b.moment) || a.place - b.place;
  const tie = (a: ScriptView, b: ScriptView): number => (a.id < b.id ? -1 : 1);
  if (field === 'title') return scripts.toSorted((a, b) => turned * a.title.localeCompare(b.title) || tie(a, b));
  return scripts.toSorted((a, b) => turned * order(a, b) || tie(a, b));
}
