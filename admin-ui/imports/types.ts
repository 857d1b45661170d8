export type { ImportRowView as ImportRow, ImportView as ImportPlan } from '../../server/season/import.dto.ts';
