/**
 * The product's own colours, chosen so that a school's colours can stand beside them: ink on warm paper for
 * sunlight, paper on deep ink for a dim gym, and one amber line. Text pairs reach 4.5 : 1, borders of controls 3 : 1.
 */
export const LIGHT = {
  ground: '#f6f2ea',
  sheet: '#fffdf8',
  band: '#ece5d6',
  ink: '#14213a',
  softInk: '#4a5468',
  line: '#d9cfbd',
  edge: '#857c6b',
  action: '#1d3f72',
  actionInk: '#ffffff',
  amber: '#f2b134',
  amberInk: '#7a4a00',
  bad: '#a3231c',
  badGround: '#fbe9e5',
  good: '#1c6440',
  goodGround: '#e4f1e7',
  careGround: '#fdf0d2',
  noteGround: '#e5ebf5',
} as const;

export const DARK: Record<keyof typeof LIGHT, string> = {
  ground: '#0e1626',
  sheet: '#172238',
  band: '#22304c',
  ink: '#f4efe3',
  softInk: '#bcc4d4',
  line: '#33425f',
  edge: '#8492ad',
  action: '#a9c6f5',
  actionInk: '#0e1626',
  amber: '#f5be55',
  amberInk: '#f7cd7f',
  bad: '#ffb3a8',
  badGround: '#44201f',
  good: '#93dbad',
  goodGround: '#173527',
  careGround: '#40320f',
  noteGround: '#22304c',
};

/** The bar above every page keeps its colours in both themes. */
export const BAR = { ground: '#14213a', ink: '#f6f2ea', softInk: '#c9cfdb', amber: '#f2b134' } as const;
