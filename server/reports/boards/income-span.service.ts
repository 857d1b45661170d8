import { Inject, Injectable } from '@nestjs/common';
import { DepartmentService } from '../../access/department.service.ts';
import type { Day } from '../../domain/day.ts';
import { addDays, fiscalYearOf } from '../../domain/day.ts';
import { refuse } from '../../domain/refusals.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { REACH_OF_TERMS, SEASONS } from './income-queries.ts';
import type { IncomeBoardQuery, IncomeSpan } from './income.dto.ts';

export interface SpanAsked {
  over: IncomeSpan;
  seasonId: string | null;
  year: number | null;
  title: string;
  from: Day | null;
  to: Day | null;
  today: Day;
  fiscalYearStartsInMonth: number;
  seasons: { id: string; name: string }[];
  schoolYears: number[];
  fiscalYearChoices: number[];
}

interface SeasonRow {
  id: string;
  name: string;
  startsOn: Day;
  endsOn: Day;
}

/** Which time the income is asked for: what was agreed for one season, a school year, or a fiscal year. */
@Injectable()
export class IncomeSpans {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(DepartmentService) private readonly departments: DepartmentService,
  ) {}

  /** @throws Refused `not-found` for a season that is none of ours */
  async asked(query: IncomeBoardQuery): Promise<SpanAsked> {
    const { fiscalYearStartsInMonth, schoolYearStartsInMonth } = await this.departments.here();
    const today = await this.departments.today();
    const seasons = await this.work.sql<SeasonRow>(SEASONS);
    const [reach] = await this.work.sql<{ first: Day | null; last: Day | null }>(REACH_OF_TERMS);
    const over = query.over ?? 'fiscalYear';
    const starts = over === 'schoolYear' ? schoolYearStartsInMonth : fiscalYearStartsInMonth;
    const year = over === 'season' ? null : Number(query.year ?? fiscalYearOf(today, starts));
    const yearsBy = (startsInMonth: number) => yearsBetween(reach?.first ?? today, reach?.last ?? today, today, startsInMonth, over === 'season' ? null : year);
    return {
      ...(year === null ? ofSeason(seasons, query.seasonId, today) : ofYear(over, year, starts)),
      over, year, today, fiscalYearStartsInMonth,
      seasons: seasons.map(({ id, name }) => ({ id, name })),
      schoolYears: yearsBy(schoolYearStartsInMonth),
      fiscalYearChoices: yearsBy(fiscalYearStartsInMonth),
    };
  }
}

type Named = Pick<SpanAsked, 'seasonId' | 'title' | 'from' | 'to'>;

/** The season asked for, else the one that is on or was last, else the next. */
function ofSeason(seasons: readonly SeasonRow[], seasonId: string | undefined, today: Day): Named {
  const season = seasonId === undefined ? (seasons.find((one) => one.startsOn <= today) ?? seasons.at(-1)) : (seasons.find((one) => one.id === seasonId) ?? refuse('not-found'));
  return { seasonId: season?.id ?? null, title: season?.name ?? 'No season yet', from: null, to: null };
}

function ofYear(over: IncomeSpan, year: number, startsInMonth: number): Named {
  const of = (calendarYear: number) => `${calendarYear}-${String(startsInMonth).padStart(2, '0')}-01` as Day;
  const first = startsInMonth > 1 ? year - 1 : year;
  const title = over === 'fiscalYear' ? `Fiscal year ${year}` : `School year ${first === year ? year : `${first}–${String(year % 100).padStart(2, '0')}`}`;
  return { seasonId: null, title, from: of(first), to: addDays(of(first + 1), -1) };
}

/** The newest first; the year asked for is always among them. */
function yearsBetween(first: Day, last: Day, today: Day, startsInMonth: number, asked: number | null): number[] {
  const ends = [first, last, today].map((day) => fiscalYearOf(day, startsInMonth));
  const [from, to] = [Math.min(...ends), Math.max(...ends)];
  const years = new Set(Array.from({ length: Math.min(to - from, 30) + 1 }, (_, place) => to - place));
  if (asked !== null) years.add(asked);
  return [...years].toSorted((one, other) => other - one);
}
