import { Inject, Injectable } from '@nestjs/common';
import { UnitOfWork } from '../platform/database/unit-of-work.ts';
import { Conditions, pageOf } from '../platform/http/lists.ts';
import type { ListQuery, Listed } from '../platform/http/lists.ts';
import type { AuditView } from './audit.dto.ts';

@Injectable()
export class AuditService {
  constructor(@Inject(UnitOfWork) private readonly work: UnitOfWork) {}

  /** What changed, newest first: which record, which fields, by whom. Never what stood in them. */
  async list(query: ListQuery): Promise<Listed<AuditView>> {
    const on = new Conditions('audit_row.department_id').add('audit_row.table_name = ?', query.q);
    const [count] = await this.work.sql<{ total: number }>(`select count(*) as total from audit_row where ${on.where}`, on.parameters);
    const data = await this.work.sql<AuditView>(
      `select audit_row.id, audit_row.table_name as "tableName", audit_row.row_id as "rowId", audit_row.action, audit_row.fields,
              person.name as "personName", audit_row.recorded_at as "recordedAt"
         from audit_row left join person on person.id = audit_row.person_id
        where ${on.where} ${pageOf({ ...query, sort: '-recordedAt' }, { recordedAt: 'audit_row.recorded_at' }, 'audit_row.id')}`,
      on.parameters,
    );
    return { data, total: count?.total ?? 0 };
  }
}
