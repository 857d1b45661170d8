export type { AskedView as AskedLine, BehindView as BehindLine, HeldView as HeldLine, HomeView as Home, RecentView as RecentLine, UnpaidView as UnpaidLine } from '../../server/reports/home.dto.ts';
