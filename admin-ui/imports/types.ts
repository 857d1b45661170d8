export interface ImportRow {
  line: number;
  action: 'create' | 'change' | 'move' | 'drop' | 'same' | 'refuse';
  sentence: string;
  reason?: string | null;
  field?: string | null;
}

export interface ImportPlan {
  planDigest: string;
  summary: Record<ImportRow['action'], number>;
  rows: ImportRow[];
  done: boolean;
}
