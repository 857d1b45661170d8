/** A line to write on; `boxes` are choices to tick, `spelled` a place for letters one by one. */
export interface FormLine {
  readonly label: string;
  readonly lines: number;
  readonly boxes: readonly string[];
  readonly spelled: number;
}

export interface BlankForm {
  readonly key: string;
  readonly title: string;
  readonly forWhom: string;
  readonly fields: readonly FormLine[];
  /** What is checked before any of it is read. */
  readonly checks: readonly string[];
}

const write = (label: string, lines = 1): FormLine => ({ label, lines, boxes: [], spelled: 0 });
const tick = (label: string, ...boxes: string[]): FormLine => ({ label, lines: 0, boxes, spelled: 0 });
const spell = (label: string, spelled: number): FormLine => ({ label, lines: 0, boxes: [], spelled });

/** Blank forms for what reaches the table on the night. @source common practice, no source */
export const BLANK_FORMS: readonly BlankForm[] = [
  {
    key: 'vehicle', title: 'Vehicle notice', forWhom: 'For whoever reports a car. Hand it to the announcer; it is read twice.',
    fields: [
      write('Make, model and color'), write('Where it stands'), spell('Plate, one character a box', 8), write('State'),
      tick('What is wrong', 'lights on', 'blocks a way', 'window open', 'alarm', 'will be towed'), write('Anything else', 2), write('Reported by, and where to find you'), write('Time'),
    ],
    checks: ['Plate read back letter by letter', 'Read once', 'Read again'],
  },
  {
    key: 'fundraiser', title: 'Fundraiser, club or camp notice', forWhom: 'For boosters and clubs. It is approved before it is read, and may be shortened.',
    fields: [
      write('Group'), write('What, where, when', 2), write('Who it is for'), write('The words to be read, 40 at most', 4),
      tick('Read', 'before the game', 'at halftime', 'after the game'), write('Asked by, and phone'),
    ],
    checks: ['Approved by', 'Names no student', 'Read'],
  },
  {
    key: 'music', title: 'Music request', forWhom: 'For teams and the band. Hand it in a day before, so that the words can be checked.',
    fields: [
      write('Title'), write('Artist, and which recording'), tick('For', 'warm-up', 'walk-out', 'time-out', 'halftime', 'other'), write('Where to start and stop'),
      tick('Version', 'clean recording', 'instrumental', 'not sure'), write('Asked by, and team'),
    ],
    checks: ['Words read from end to end', 'Allowed by', 'On the player and tried'],
  },
];
