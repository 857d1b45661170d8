export type { GlanceNightView, GlanceView, ToMend } from '../../server/reports/boards/board.dto.ts';
export type { GlanceCell, GlanceRow, GlanceState } from '../../server/domain/reports/glance.ts';
