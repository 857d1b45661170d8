import type { WindowRule } from '../sport-rules.ts';

// Places per window are common practice, no source: a department changes them to what its crowd bears.
export const PREGAME: WindowRule = { kind: 'pregame', owner: 'us', places: 3, timesPerGame: 1, longestReadSeconds: 30 };
export const POSTGAME: WindowRule = { kind: 'postgame', owner: 'us', places: 1, timesPerGame: 1, longestReadSeconds: 30 };
export const DEAD_BALL: WindowRule = { kind: 'deadBall', owner: 'us', places: 1, timesPerGame: 0, longestReadSeconds: 4 };
