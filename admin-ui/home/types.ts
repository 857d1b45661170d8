export type { BehindView as BehindLine, HomeView as Home, RecentView as RecentLine, UnpaidView as UnpaidLine } from '../../server/reports/home.dto.ts';
