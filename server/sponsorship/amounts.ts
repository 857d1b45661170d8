/** Ten billion dollars: far above any price, far below the whole numbers that are exact when counts multiply it. */
export const MOST_CENTS = 1_000_000_000_000;

/** Ten million dollars for one read or one benefit. */
export const MOST_RATE_CENTS = 1_000_000_000;

/** Reads of one commitment; each holds a value of its own. */
export const MOST_READS = 10_000;
