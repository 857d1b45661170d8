export type { GlanceNightView, GlanceView, ToMend } from '../../server/reports/boards/board.dto.ts';
export type { GlanceCell, GlanceRow, GlanceState } from '../../server/domain/reports/glance.ts';
export type { AtRiskLine, AtRiskView, InventoryView } from '../../server/reports/boards/board.dto.ts';
export type { RepairKind } from '../../server/domain/reports/at-risk.ts';
export type { PlacesOfMonth } from '../../server/domain/reports/inventory.ts';
