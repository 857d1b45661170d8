export type { AuditView as AuditRow } from '../../server/access/audit.dto.ts';
export type { SealView as Seal } from '../../server/access/audit.dto.ts';
