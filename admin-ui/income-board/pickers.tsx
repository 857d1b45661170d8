import { Pick, SellerPick } from '../books/pickers.tsx';
import type { IncomeBoardView } from './types.ts';

const SPANS = [{ id: 'season', name: 'A season' }, { id: 'schoolYear', name: 'School year' }, { id: 'fiscalYear', name: 'Fiscal year' }];

const schoolYearName = (year: number) => ({ id: String(year), name: `${year - 1}–${String(year % 100).padStart(2, '0')}` });
const fiscalYearName = (year: number) => ({ id: String(year), name: String(year) });

type Asked = Partial<Record<'sellerId' | 'over' | 'seasonId' | 'year', string>>;

/** Whose books, and for which time: a season, a school year and a fiscal year are three things. */
export function IncomePickers({ asked, view, change }: { asked: Asked; view: IncomeBoardView | undefined; change: (name: 'sellerId' | 'over' | 'seasonId' | 'year', value: string) => void }) {
  const over = asked.over ?? view?.over;
  return (
    <>
      <SellerPick value={asked.sellerId ?? view?.sellerId ?? undefined} onChange={(id) => change('sellerId', id)} />
      <Pick label="For" value={over} choices={SPANS} onChange={(span) => change('over', span)} />
      {over === 'season' && <Pick label="Season" value={asked.seasonId ?? view?.seasonId ?? undefined} choices={view?.seasons ?? []} onChange={(id) => change('seasonId', id)} />}
      {over === 'schoolYear' && <Pick label="School year" value={asked.year ?? yearOf(view)} choices={(view?.schoolYears ?? []).map(schoolYearName)} onChange={(year) => change('year', year)} />}
      {over === 'fiscalYear' && <Pick label="Fiscal year" value={asked.year ?? yearOf(view)} choices={(view?.fiscalYearChoices ?? []).map(fiscalYearName)} onChange={(year) => change('year', year)} />}
    </>
  );
}

const yearOf = (view: IncomeBoardView | undefined) => (view?.year == null ? undefined : String(view.year));
