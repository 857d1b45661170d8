/** The same words beside the switch wherever it is. */
export const ROTATES = {
  label: 'Takes turns with the sponsor’s other copy of this kind',
  helperText: 'Every copy so marked is read in turn, game by game of the home team; a game always gets the same one.',
} as const;
