import type { OfferView } from './offer-view.ts';

const VARIES = {
  nothing: null,
  attendance: 'The price goes up and down with attendance. Such a payment is no qualified sponsorship payment (26 U.S.C. 513(i)(2)(B)(i)): ask your tax adviser before you sign.',
  audience: 'The price goes up and down with how many see or hear it. Such a payment is no qualified sponsorship payment (26 U.S.C. 513(i)(2)(B)(i)): ask your tax adviser before you sign.',
};

/** What the department's own copy says besides; none of it is for the sponsor. */
export function officeNotes({ priceVariesWith, pricing, beyondPlacesReason, beyondPlacesPersonName, exceptions, holdsInventory, note, valuesTrouble }: OfferView): string[] {
  const notes = [
    VARIES[priceVariesWith],
    pricing === 'perRead' ? 'A price for each read given depends on what happens, which the statute does not name; where it follows how many hear it, ask your tax adviser.' : null,
    beyondPlacesReason === null ? null : `Put although the season has no places for it: ${beyondPlacesReason}${beyondPlacesPersonName === null ? '' : ` (${beyondPlacesPersonName})`}`,
    ...exceptions.map((one) => `Exception approved by ${one.approvedByName}: ${one.reason}`),
    holdsInventory ? 'It holds its places until it lapses.' : 'It holds no places.',
    valuesTrouble ? valuesTrouble.sentence : null,
    note === null ? null : `Note: ${note}`,
  ];
  return notes.filter((one): one is string => one !== null && one !== undefined);
}
