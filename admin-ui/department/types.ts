export interface DepartmentView {
  id: string;
  version: number;
  name: string;
  zone: string;
  currency: string;
  locale: string;
  fiscalYearStartsInMonth: number;
  schoolYearStartsInMonth: number;
  settings: { prayerOn: boolean; foulCountsRead: boolean; bankShotMention: 'nextWindow' | 'deadBall' | 'atOnce'; cutShortCounts: boolean };
}
