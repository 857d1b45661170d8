import { Inject, Injectable } from '@nestjs/common';
import { DepartmentService } from '../../access/department.service.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import type { DepositSlipSheet } from '../../platform/typesetting/deposit-slip-sheet.ts';
import { Typesetter } from '../../platform/typesetting/typesetter.ts';
import { DepositSlipViews } from './deposit-slip-view.service.ts';

/** Reads in a short unit, closes it, and only then sets the page. */
@Injectable()
export class DepositSlipPrinting {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(DepositSlipViews) private readonly views: DepositSlipViews,
    @Inject(DepartmentService) private readonly departments: DepartmentService,
    @Inject(Typesetter) private readonly typesetter: Typesetter,
  ) {}

  async pdf(id: string): Promise<{ bytes: Buffer; name: string }> {
    const sheet = await this.work.run(() => this.sheetOf(id));
    return { bytes: await this.typesetter.pdf('depositSlip', sheet), name: `${sheet.number.replace(/[^A-Za-z0-9-]/g, '-')}.pdf` };
  }

  private async sheetOf(id: string): Promise<DepositSlipSheet> {
    const slip = await this.views.one(id);
    const { name: departmentName, locale, currency } = await this.departments.here();
    return { ...slip, departmentName, locale, currency };
  }
}
