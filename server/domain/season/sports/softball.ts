import type { SportFile } from '../sport-rules.ts';
import { SEVEN_INNINGS } from './baseball.ts';

export const SOFTBALL: SportFile = {
  usualMinutes: 120,
  rules: [{ ...SEVEN_INNINGS, numberRule: 'upTo99', source: 'NFHS Softball: seven innings; run rule by state; three charged conferences and numbers from memory' }],
};
