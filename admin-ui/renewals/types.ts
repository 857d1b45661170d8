export type { RenewalRow, RenewalsView } from '../../server/reports/boards/renewals.dto.ts';
