import { AuditList } from './list.tsx';

export const audit = { name: 'audit', list: AuditList };
