import type { DefaultScript } from './default-script.ts';
import { EMERGENCY_SCRIPTS } from './default-scripts-emergency.ts';
import { GAME_SCRIPTS } from './default-scripts-game.ts';
import { NOTICE_SCRIPTS } from './default-scripts-notices.ts';
import { OPENING_SCRIPTS } from './default-scripts-opening.ts';

/** The first verse as it was published in 1814; kept for the night when the singer freezes or the recording fails. */
export const ANTHEM_FIRST_VERSE = `
O say can you see, by the dawn's early light,
What so proudly we hailed at the twilight's last gleaming,
Whose broad stripes and bright stars, through the perilous fight,
O'er the ramparts we watched, were so gallantly streaming?
And the rockets' red glare, the bombs bursting in air,
Gave proof through the night that our flag was still there;
O say does that star-spangled banner yet wave
O'er the land of the free and the home of the brave?`.trim();

/** The library a new department starts with, for every sport and for single ones, in the order of a night. */
export const LIBRARY_TO_START_WITH: readonly DefaultScript[] = [...OPENING_SCRIPTS, ...GAME_SCRIPTS, ...NOTICE_SCRIPTS, ...EMERGENCY_SCRIPTS];

/**
 * The same, only what is for every sport. The emergency scripts read the venue's own words; where the
 * venue has none, they say the least that is safe to say.
 */
export const DEFAULT_SCRIPTS: readonly DefaultScript[] = LIBRARY_TO_START_WITH.filter((script) => script.sport === null);
