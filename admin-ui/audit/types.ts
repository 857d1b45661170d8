export type { AuditView as AuditRow } from '../../server/access/audit.service.ts';
export type { SealView as Seal } from '../../server/access/seal.service.ts';
