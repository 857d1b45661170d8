import { Inject, Injectable } from '@nestjs/common';
import type { Day } from '../../domain/day.ts';
import { refuse, sentenceOfRefusal } from '../../domain/refusals.ts';
import type { RefusalCode } from '../../domain/refusals.ts';
import { newId } from '../../platform/database/ids.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import type { ExclusivityDto } from './company.dto.ts';
import { Exclusivity } from './exclusivity.entity.ts';

/** The exclusive rights of a draft, of a contract or an offer. */
@Injectable()
export class DealExclusivities {
  constructor(@Inject(UnitOfWork) private readonly work: UnitOfWork) {}

  /** In place of those the draft had. @throws Refused `ends-before-it-starts`, `exclusivity-without-games`, `exclusivity-without-windows` */
  async write(deal: { contractId: string } | { offerId: string }, forms: readonly ExclusivityDto[]): Promise<void> {
    await this.work.remove(Exclusivity, deal);
    forms.forEach(checkForm);
    const rows = forms.map((form) => ({
      ...deal,
      id: form.id ?? newId(),
      categoryId: form.categoryId,
      reach: form.reach,
      schoolId: form.schoolId ?? null,
      startsOn: form.startsOn as Day,
      endsOn: form.endsOn as Day,
      gameIds: form.reach === 'game' ? (form.gameIds ?? []) : [],
      windowKinds: form.reach === 'window' ? (form.windowKinds ?? []) : [],
    }));
    await this.work.insert(Exclusivity, rows);
  }
}

/** At the field of the form. */
function checkForm(form: ExclusivityDto, place: number): void {
  const no = (code: RefusalCode, field: string): void => refuse(code, {}, { exclusivities: { [place]: { [field]: sentenceOfRefusal(code) } } });
  if (form.endsOn < form.startsOn) no('ends-before-it-starts', 'endsOn');
  if (form.reach === 'game' && !form.gameIds?.length) no('exclusivity-without-games', 'gameIds');
  if (form.reach === 'window' && !form.windowKinds?.length) no('exclusivity-without-windows', 'windowKinds');
}
