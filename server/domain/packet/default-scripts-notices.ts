import { script } from './default-script.ts';
import type { DefaultScript } from './default-script.ts';

const FUNDRAISER = `
[[read only from an approved form, and as it stands there]]
A fundraiser for ____________ (group): ____________ (what), on ____________ (day) at ____________ (where). What comes in goes to ____________ (what for).`;

const CLUB = `
[[read only from an approved form, and as it stands there]]
From ____________ (club): ____________ (what), on ____________ (day) at ________ (time), in ____________ (where).`;

const CAMP = `
[[read only from an approved form, and as it stands there]]
A camp for ____________ (grades or ages) is held from ____________ to ____________ (days) at ____________ (where). Forms are at ____________ (where).`;

const CAR = 'a ____________ (color and make), parked at ____________ (where), license plate __ __ __ __ __ __ __';

// All of it twice: common practice, no source.
const VEHICLE = `
[[Read the plate character by character, a breath between. Say “zero” for the number and “oh” for the letter.]]
Your attention, please. Would the owner of ${CAR}, please go to it now: ______________________ (what is wrong).
[[pause 2]]
Once again: ${CAR}. Please go to it now: ______________________ (what is wrong).`;

const LOST_CHILD = `
[[Never from the public form. The child stays with two adults at the table. Say no name, no age and nothing of what the child looks like or wears.]]
Your attention, please. Someone is waiting for their family at the scorer's table. If a child who came with you is not beside you, please come to the table now.
[[nobody came: tell the administrator on duty, then read it once again]]`;

const FOUND_ITEM = `
[[Say what kind of thing it is, never a name on it, a number or what is inside.]]
____________ (what kind of thing) was found at ____________ (where). Its owner can ask for it at ____________ (where).`;

/** Short notices that come to the table during the night, each with its form. */
export const NOTICE_SCRIPTS: readonly DefaultScript[] = [
  script('fundraiser', 'Fundraiser', FUNDRAISER, { isOn: false }),
  script('club', 'Club', CLUB, { isOn: false }),
  script('camp', 'Camp', CAMP, { isOn: false }),
  script('vehicleNotice', 'Vehicle notice', VEHICLE),
  script('lostChild', 'A child is waiting', LOST_CHILD),
  script('foundItem', 'Something was found', FOUND_ITEM),
];
