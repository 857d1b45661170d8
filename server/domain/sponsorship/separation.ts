/**
 * How far a sponsor's reads keep from those of another sponsor of the same category: anywhere, not in one window, not in
 * one window nor in the windows next to it, or not in one game. Common practice, no source.
 */
export const SEPARATIONS = ['none', 'window', 'next', 'game'] as const;
export type Separation = (typeof SEPARATIONS)[number];
