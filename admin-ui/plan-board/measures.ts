import type { Row } from './layout-of-board.ts';

/** Pixels: the same in every column, so that the rows stand level without being measured. */
export const HEAD_HEIGHT = 92;
export const NAMES_WIDTH = 108;
export const COLUMN_WIDTH = 158;
const CARD_HEIGHT = 34;

export const rowHeight = (row: Row): number => row.cards * CARD_HEIGHT + 10;
