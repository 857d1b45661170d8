export interface AuditView {
  id: string;
  tableName: string;
  rowId: string;
  action: 'insert' | 'update' | 'delete';
  fields: string[];
  personName: string | null;
  recordedAt: string;
}

export interface SealView {
  id: string;
  number: number;
  rowCount: number;
  head: string;
  recordedAt: string;
}
