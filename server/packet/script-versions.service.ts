import { Inject, Injectable } from '@nestjs/common';
import { refuse } from '../domain/refusals.ts';
import { UnitOfWork } from '../platform/database/unit-of-work.ts';
import type { Listed } from '../platform/http/lists.ts';
import type { ApproveScriptDto, ScriptVersionView, ScriptView } from './script.dto.ts';
import { ScriptRow } from './script.entity.ts';
import { ScriptService } from './script.service.ts';
import { ScriptWordings } from './script-wordings.service.ts';

/** The wordings of a script: what they were, who approved the present one, and an old one brought back. */
@Injectable()
export class ScriptVersions {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(ScriptService) private readonly scripts: ScriptService,
    @Inject(ScriptWordings) private readonly wordings: ScriptWordings,
  ) {}

  /** The present words first. */
  async list(id: string): Promise<Listed<ScriptVersionView>> {
    const script = await this.scripts.one(id);
    const kept = script.isDefault ? [] : await this.wordings.list(id);
    const { wordsNumber: number, title, language, text, secondLanguage, secondText } = script;
    const present = { number, title, language, text, secondLanguage, secondText, recordedAt: null, recordedByName: null };
    const data = kept[0]?.number === number ? kept : [present, ...kept];
    return { data, total: data.length };
  }

  /** The words of that number become the newest ones. */
  async bringBack(id: string, version: number, number: number): Promise<ScriptView> {
    const old = (await this.list(id)).data.find((one) => one.number === number) ?? refuse('script-version-gone');
    const { text, language, secondText, secondLanguage } = old;
    return this.scripts.change(id, version, { text, language, secondText, secondLanguage });
  }

  /** @throws Refused `stale-version` where the words are no longer those that were read */
  async approve(id: string, { approvedByName, approvedOn, wordsNumber }: ApproveScriptDto): Promise<ScriptView> {
    const read = await this.scripts.one(id);
    if (read.wordsNumber !== wordsNumber) refuse('stale-version');
    await this.scripts.stored(id);
    await this.work.update(ScriptRow, id, null, { approvedByName, approvedOn });
    return this.scripts.one(id);
  }
}
