export type { CautionView as Caution, LateNightView as LateNight, MonthPageView as MonthPage, MonthView as Month } from '../../server/reports/months/month.dto.ts';
