import type { Day } from '../domain/day.ts';
import { PartialType } from '@nestjs/swagger';
import { MOMENTS } from '../domain/packet/script.ts';
import type { Moment } from '../domain/packet/script.ts';
import { ChoiceField, CountField, FlagField, OptionalTextField, TextField } from '../platform/http/fields.ts';
import { ListQuery, QueryFlag } from '../platform/http/lists.ts';
import type { ScriptRow } from './script.entity.ts';

export class ScriptDto {
  @ChoiceField(MOMENTS) moment: Moment;
  @OptionalTextField(40) sport?: string | null;
  @ChoiceField(['en', 'es'], { optional: true }) language?: 'en' | 'es';
  @TextField(1, 120) title: string;
  @TextField(1, 5000) text: string;
  @FlagField({ optional: true }) isOn?: boolean;
  @CountField(1, 99, { optional: true }) place?: number;
}

export class ChangeScriptDto extends PartialType(ScriptDto) {}

export class ScriptListQuery extends ListQuery {
  @ChoiceField(MOMENTS, { optional: true }) moment?: Moment;
  @ChoiceField(['en', 'es'], { optional: true }) language?: 'en' | 'es';
  @QueryFlag() isOn?: boolean;
}

export interface ScriptView {
  id: string;
  moment: Moment;
  sport: string | null;
  language: 'en' | 'es';
  title: string;
  text: string;
  /** which form of the moment this is, as one of the moment's variants */
  variant: string | null;
  secondLanguage: 'en' | 'es' | null;
  secondText: string | null;
  /** counts the changes of its words */
  wordsNumber: number;
  approvedOn: Day | null;
  approvedByName: string | null;
  isOn: boolean;
  place: number;
  /** as it came; nobody changed it yet */
  isDefault: boolean;
  version: number;
}

export function scriptView(row: ScriptRow, isDefault: boolean): ScriptView {
  const { departmentId: _, ...view } = row;
  return { ...view, isDefault };
}
