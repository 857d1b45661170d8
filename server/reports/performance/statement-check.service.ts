import { Inject, Injectable } from '@nestjs/common';
import { SealService } from '../../access/seal.service.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { dayText } from '../../platform/typesetting/amount-text.ts';
import type { StatementCheckView } from './performance.dto.ts';
import { StatementViews } from './statement-views.service.ts';

const ROW_STANDS = `select digest = sha256(convert_to((jsonb_strip_nulls(to_jsonb(kept)) - 'digest')::text, 'UTF8')) as stands
  from performance_statement as kept where department_id = $1 and id = $2`;

/** Whether the head that a statement bears still stands in the chain of seals. Inside a unit of work. */
@Injectable()
export class StatementCheck {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(SealService) private readonly seals: SealService,
    @Inject(StatementViews) private readonly views: StatementViews,
  ) {}

  /** @throws Refused `not-found` */
  async of(id: string): Promise<StatementCheckView> {
    const { sealNumber, sealHead, number, issuedOn } = await this.views.stored(id);
    const chain = await this.seals.standing(sealNumber, sealHead);
    const [row] = await this.work.sql<{ stands: boolean }>(ROW_STANDS, [id]);
    const isVerified = chain.stands && row?.stands === true;
    const words = isVerified
      ? `Seal ${sealNumber} bears the head that statement ${number} of ${dayText(issuedOn, 'en-US')} names, and the chain holds from there to seal ${chain.followedTo}.`
      : `${row?.stands === true ? `The chain of seals does not hold from seal ${sealNumber}` : 'The stored statement is not what was written'}. Run the check of the books.`;
    return { id, sealNumber, sealHead, isVerified, followedTo: chain.followedTo, words };
  }
}
