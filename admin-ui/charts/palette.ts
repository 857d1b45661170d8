/** How a line is broken, a point is shaped and a bar is filled, so that series differ where no color is. */
export type Pattern = 'solid' | 'rising' | 'dots' | 'level' | 'falling' | 'upright';
export type Mark = 'circle' | 'square' | 'diamond' | 'triangle' | 'cross' | 'star';

export interface SeriesLook {
  name: string;
  /** on the light sheet and on the dark one, at least 3 : 1 against it */
  light: string;
  dark: string;
  /** `stroke-dasharray`; none where the line is whole */
  dash: string | undefined;
  mark: Mark;
  pattern: Pattern;
}

/**
 * The colors of series, in the order in which they are given out. They are six steps of lightness, told out so that two neighbors are
 * never neighboring steps: in grey they still differ by 1.9 : 1 or more, and by 1.65 : 1 on the dark sheet.
 */
export const SERIES: readonly SeriesLook[] = [
  { name: 'navy', light: '#111d34', dark: '#dce8fa', dash: undefined, mark: 'circle', pattern: 'solid' },
  { name: 'copper', light: '#9b4c24', dark: '#e5834b', dash: '7 4', mark: 'square', pattern: 'rising' },
  { name: 'green', light: '#143d26', dark: '#9fd8b8', dash: '2 3', mark: 'diamond', pattern: 'dots' },
  { name: 'blue', light: '#357fb5', dark: '#408ccf', dash: '10 3 2 3', mark: 'triangle', pattern: 'level' },
  { name: 'plum', light: '#793262', dark: '#df9fca', dash: '14 4', mark: 'cross', pattern: 'falling' },
  { name: 'gold', light: '#bf881b', dark: '#8c6e1e', dash: '1 4', mark: 'star', pattern: 'upright' },
];

/** Words and lines of a chart: words 4.5 : 1, the axis 3 : 1; the grid is only a help and stays faint. */
export const CHART_INK = {
  light: { words: '#14213a', softWords: '#4a5468', axis: '#857c6b', grid: '#d9cfbd', today: '#a3231c' },
  dark: { words: '#f4efe3', softWords: '#bcc4d4', axis: '#8492ad', grid: '#33425f', today: '#ffb3a8' },
} as const;

/** What a series is drawn in; after the last look the first comes again. */
export const lookOf = (place: number): SeriesLook => SERIES[place % SERIES.length]!;
