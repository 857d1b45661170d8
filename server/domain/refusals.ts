/** Who may go past a "no", giving a reason: the director, or nobody because a law or a ledger would break. */
export type Override = 'director' | 'never';

export interface Refusal {
  /** the HTTP status the answer carries */
  status: 400 | 401 | 403 | 404 | 409 | 412 | 413 | 422 | 428 | 429 | 500 | 503;
  /** plain English; `{name}` is filled from the details */
  sentence: string;
  override: Override;
}

const no = (status: Refusal['status'], sentence: string, override: Override = 'never'): Refusal => ({ status, sentence, override });

/** Every "no" of the product, by room. Add a line to the room that says it. */
export const REFUSALS = {
  // everywhere
  malformed: no(400, 'Something in the form cannot be read as it is; see the fields.'),
  'not-found': no(404, 'There is nothing here by that name.'),
  'too-large': no(413, 'This is larger than can be taken in one piece.'),
  'too-many': no(429, 'Too many tries in a short time. Wait a little and try again.'),
  'our-fault': no(500, 'Something went wrong on our side and nothing was changed. Try again; if it stays, show the person who runs this server the time.'),
  busy: no(503, 'The books are busy with another change. Try again in a moment.'),
  'version-missing': no(428, 'Say which version you changed: send If-Match with the version you saw.'),
  'stale-version': no(412, 'Somebody changed this since you opened it. Look at it again, then make your change.'),
  'idempotency-key-missing': no(400, 'Moving money needs an Idempotency-Key of 16 to 128 letters, digits or dashes, so that a doubled send happens once.'),
  'idempotency-key-used': no(422, 'This Idempotency-Key was used for something else already.'),
  'still-running': no(409, 'The same request is still running. Ask again in a moment.'),
  'already-there': no(409, 'This is there already.'),
  'still-in-use': no(409, 'This is still in use elsewhere, so it cannot be taken away.'),
  'unknown-reference': no(422, 'The form names something that is not here.'),
  'history-is-append-only': no(422, 'What happened is never edited; add a correction instead.'),
  'amount-too-large': no(422, 'This amount is larger than can be kept to the cent.'),
  'nothing-in-the-form': no(400, 'There is nothing in the form.'),

  // access
  'not-signed-in': no(401, 'Sign in first.'),
  'signed-out-by-now': no(401, 'You were signed out. Sign in again; nothing you sent was lost, but it was not kept either.'),
  'wrong-sign-in': no(401, 'The e-mail address or the password is not right.'),
  'sign-in-delayed': no(429, 'Too many wrong passwords. Try again in {waitSentence}.'),
  'link-not-good': no(401, 'This link does not open anything, or not any more. Ask the athletic department for a new one.'),
  'link-already-revoked': no(409, 'This link is revoked already.'),
  'link-ends-before-it-starts': no(422, 'The link would end before it starts.'),
  'insecure-address': no(403, 'Signing in needs https, or http on this same computer: a password must not travel in the open.'),
  'other-site': no(403, 'This request came from another site, so it was not taken.'),
  'role-missing': no(403, 'Your role in this department does not allow this. A director can change that.'),
  'no-membership': no(403, 'You do not belong to a department here yet. Ask a director to add you.'),
  'last-director': no(422, 'A department keeps at least one director.'),
  'email-taken': no(409, 'Somebody already signs in with this e-mail address.'),
  'already-a-member': no(409, 'This person belongs to the department already.'),
  'wrong-password': no(422, 'The present password is not right.'),
  'password-too-short': no(422, 'A password needs 15 characters or more. A short sentence is easiest to remember.'),
  'password-too-long': no(422, 'A password may have up to 200 characters.'),
  'password-common': no(422, 'This password is on the list of those tried first by strangers. Choose another.'),

  // season
  'game-cannot-start': no(422, 'Only a planned game can begin.'),
  'game-not-under-way': no(422, 'Only a game that is under way can be suspended.'),
  'game-not-suspended': no(422, 'Only a suspended game can be resumed.'),
  'game-cannot-finish': no(422, 'Only a game that is planned, under way or suspended can be marked as played.'),
  'game-cannot-be-postponed': no(422, 'Only a planned game can be postponed. A game that has begun is suspended.'),
  'game-cannot-be-moved': no(422, 'Only a planned or postponed game can move to another day.'),
  'game-cannot-be-cancelled': no(422, 'Only a planned, postponed or suspended game can be cancelled.'),
  'game-cannot-be-deleted': no(422, 'Only a planned or postponed game can be deleted.'),
  'game-has-log': no(422, 'The table has logged this game already, so it stays where it is.'),
  'number-taken': no(409, 'Another player of the team wears this number.'),
  'already-on-the-roster': no(409, 'This player is on the list already.'),
  'season-has-games': no(422, 'The season has games already, so it keeps its sport.'),
  'team-has-games': no(422, 'The team has players or games already, so it stays with its school and season.'),
  'player-erased': no(422, 'The name of this player was erased. Put the player on the list anew.'),
  'game-follows-itself': no(422, 'A game cannot start after itself, or after a game that waits for it.'),
  'team-of-another-season': no(422, 'A team plays in the season whose list it is on.'),
  'game-has-counted-read': no(422, 'A read given in this game is counted already, so the game cannot be cancelled. Take the read back first.'),
  'floor-taken': no(422, 'Another game is on this floor at that time. Give the reason if they share it.', 'director'),

  // files that are imported
  'file-too-large': no(413, 'A file may have up to 2 MB and 5,000 rows.'),
  'file-empty': no(422, 'The file has no rows below its headings.'),
  'file-unreadable': no(422, 'Line {line} cannot be read: {reason}'),
  'file-row-width': no(422, 'Line {line} has {found} fields, but the headings have {expected}.'),
  'file-not-text': no(422, 'This file is not text. Save the sheet as CSV (UTF-8) and try again.'),
  'heading-missing': no(422, 'A column is missing: {columns}.'),
  'heading-twice': no(422, 'Two columns mean the same: {columns}.'),
  'import-value-missing': no(422, '{field} is empty.'),
  'import-value-too-long': no(422, '{field} may have up to {most} characters.'),
  'import-day-unreadable': no(422, '"{value}" is not a day. Write 2026-12-04 or 12/4/2026.'),
  'import-time-unreadable': no(422, '"{value}" is not a time. Write 7:00 PM or 19:00.'),
  'import-time-unclear': no(422, '"{value}" may be morning or evening. Write AM or PM with it.'),
  'import-money-unreadable': no(422, '"{value}" is not an amount. Write 1200.00.'),
  'import-count-unreadable': no(422, '"{value}" is not a whole number.'),
  'import-choice-unknown': no(422, '"{value}" is not known here. Use one of: {choices}.'),
  'import-number-unreadable': no(422, '"{value}" is not a shirt number. It has one to three digits.'),
  'import-number-twice': no(422, 'Number {number} is on line {line} as well. Two players of a team cannot wear one number.'),
  'import-player-twice': no(422, 'This player is on line {line} as well.'),
  'import-team-unknown': no(422, 'There is no team "{value}" in this season. Add the team first.'),
  'import-team-unclear': no(422, 'Several teams are called "{value}". Give the level as well.'),
  'import-game-twice': no(422, 'The same game is on line {line} as well.'),
  'import-outside-id-twice': no(422, 'This outside id is on line {line} as well.'),
  'import-day-outside-season': no(422, '{day} lies outside the season ({startsOn} to {endsOn}).'),
  'import-read-kind-unknown': no(422, 'There is no read kind "{value}". Add it first, with its windows.'),
  'import-seller-unknown': no(422, 'There is no seller of record "{value}". Add it first, with its numbers.'),
  'import-seller-missing': no(422, 'There are several sellers of record. Say which one signs.'),
  'import-contract-signed': no(422, 'This contract is signed. Change it by an amendment, not by a file.'),
  'import-contract-differs': no(422, '{field} differs from line {line} of the same contract.'),
  'import-changed-since': no(409, 'Something changed since the dry run. Look at it again before you confirm.'),

  // planning
  'placement-on-occurrence': no(422, 'This commitment is owed when something happens on the floor, so it has no place of its own.'),
  'placement-game-not-open': no(422, 'Reads are placed into a game that is still to be played.'),
  'placement-game-not-covered': no(422, 'This commitment does not cover this game: look at its teams, levels and days.'),
  'placement-game-without-night': no(422, 'This game is on no night yet, so nothing can be placed into it.'),
  'placement-already-logged': no(409, 'The table has logged this read already, so its place stays.'),
  'placement-most-per-game': no(422, 'At most {most} of this commitment go into one game.'),
  'unknown-window': no(422, 'This game has no such window.'),
  'window-not-ours': no(422, 'This window belongs to the conference or the association, so it has no places for our sponsors.'),
  'window-not-of-the-kind': no(422, '{readKind} is not read in this window.'),
  'window-full': no(409, 'This window has {places} places and all are taken.'),
  'read-kind-full': no(409, '{readKind} already has {most} sponsors in this game.'),

  // packet
  'script-broken': no(422, 'These words cannot be filled in: {reason}'),
  'script-is-the-default': no(422, 'These are the words every department starts with. Turn the script off instead.'),
  'packet-out-of-date': no(409, 'Something changed since packet {number} was issued. Issue it again, then print.'),

  // night
  'read-without-cue': no(422, 'A read needs the cue it belongs to.'),
  'read-without-game': no(422, 'A sponsor read needs the game it was given in.'),
  'read-without-outcome': no(422, 'Say whether it was given, cut short or not read.'),
  'read-without-reason': no(422, 'Say why it was cut short or not read.'),
  'outcome-without-read': no(422, 'Only a read or a mention is given, cut short or not read.'),
  'happening-unnamed': no(422, 'Say what happened.'),
  'foul-without-team': no(422, 'Say which team the foul is on.'),
  'taking-back-nothing': no(422, 'Say which entry is taken back.'),
  'unknown-entry': no(422, 'There is no such entry in this log.'),
  'entry-of-another-night': no(422, 'This entry belongs to another night.'),
  'entry-taken-back-already': no(409, 'This entry was taken back already.'),
  'taking-back-stays': no(422, 'A taking back stays. Log again what was taken back by mistake.'),
  'night-already-signed-off': no(409, 'This night is signed off already. What comes now is an amendment.'),
  'night-not-yet-held': no(422, 'This night has not come yet.', 'director'),
  'night-without-games': no(422, 'No game of this night was held, so there is nothing to sign off.'),
  'night-not-signed-off': no(422, 'This night is still open. Log it at the table; what is logged is counted at sign-off.'),
  'unknown-placement': no(422, 'No such read is planned for this night.'),
  'unknown-cue': no(422, 'This cue belongs to no game of this night.'),
  'cue-of-another-read': no(422, 'This cue belongs to another read.'),
  'mention-on-schedule': no(422, 'This commitment is planned, not owed when something happens. Log it as a read.'),
  'entry-too-large': no(422, 'This entry says more than can be kept: its details may have up to 4,000 characters.'),

  // names and places that are taken, or that the form names in vain
  'school-name-taken': no(409, 'A school of that name is there already.'),
  'venue-name-taken': no(409, 'A venue of that name is there already.'),
  'floor-name-taken': no(409, 'The venue already has a floor of that name.'),
  'season-name-taken': no(409, 'A season of that name is there already.'),
  'team-name-taken': no(409, 'The school already has a team of that name in this season.'),
  'category-name-taken': no(409, 'A category of that name is there already.'),
  'sponsor-name-taken': no(409, 'A sponsor of that name is there already.'),
  'seller-name-taken': no(409, 'A seller of record of that name is there already.'),
  'number-prefix-taken': no(409, 'Another seller of record uses this prefix for its numbers.'),
  'payer-name-taken': no(409, 'A payer of that name is there already.'),
  'read-kind-name-taken': no(409, 'A read kind of that name is there already.'),
  'rate-already-set': no(409, 'The rate card of this season has a price for that already.'),
  'rate-of-nothing': no(422, 'A rate is the price of one read kind or of one other benefit.'),
  'slogan-taken': no(409, 'This slogan of the sponsor is registered already.'),
  'copy-title-taken': no(409, 'This sponsor already has copy of that title.'),
  'script-title-taken': no(409, 'There is a script of that title for this moment already.'),
  'contract-number-taken': no(409, 'A contract of that number is there already.'),
  'game-outside-id-taken': no(409, 'A game with this outside id is there already.'),
  'sponsor-outside-id-taken': no(409, 'A sponsor with this outside id is there already.'),
  'contract-outside-id-taken': no(409, 'A contract with this outside id is there already.'),
  'account-code-taken': no(409, 'An account of that number is there already.'),
  'second-text-incomplete': no(422, 'A second text needs its language, and a second language its text.'),
  'second-language-is-the-first': no(422, 'The second text is in the language of the first. Choose the other one.'),
  'ends-before-it-starts': no(422, 'The last day lies before the first.'),
  'unknown-school': no(422, 'There is no such school.'),
  'unknown-venue': no(422, 'There is no such venue.'),
  'unknown-floor': no(422, 'There is no such floor.'),
  'unknown-season': no(422, 'There is no such season.'),
  'unknown-team': no(422, 'There is no such team.'),
  'unknown-player': no(422, 'There is no such player.'),
  'unknown-game': no(422, 'There is no such game.'),
  'unknown-night': no(422, 'There is no such night.'),
  'unknown-category': no(422, 'There is no such category.'),
  'unknown-sponsor': no(422, 'There is no such sponsor.'),
  'unknown-seller': no(422, 'There is no such seller of record.'),
  'unknown-payer': no(422, 'There is no such payer.'),
  'unknown-read-kind': no(422, 'There is no such read kind.'),
  'unknown-contract': no(422, 'There is no such contract.'),
  'unknown-commitment': no(422, 'There is no such commitment.'),
  'unknown-copy': no(422, 'There is no such copy.'),
  'unknown-copy-version': no(422, 'There is no such version of the copy.'),
  'unknown-payment': no(422, 'There is no such payment.'),

  // ledger
  'entry-does-not-balance': no(422, 'This entry does not balance, so nothing was booked.'),
  'month-closed': no(422, 'The month of {day} is closed; book it on the first open day.'),

  // contracts: what stands in them
  'contract-not-a-draft': no(422, 'This contract is signed, so its terms stay. Amend it instead.'),
  'category-blocked': no(422, 'The department does not take sponsors of the category {category}. Record the exception and who approved it.', 'director'),
  'price-beside-price-each': no(422, 'A contract priced by the read has no other price. Set the price to zero.'),
  'no-games-covered': no(422, 'The calendar has no game that this contract covers yet, so there is nothing its price could be shared over. Enter the schedule first.'),
  'nothing-to-amend': no(422, 'Say how many reads are added, or what the price changes by.'),
  'copy-stopped': no(422, 'This copy was stopped, so nothing of it is approved or read any more. Write new copy.'),
  'copy-already-approved': no(409, 'This version is approved already.'),
  'copy-marked': no(422, 'The copy check marks these words ({words}), and the department approves no marked copy. Change them, or give the reason.', 'director'),
  'contract-without-lines': no(422, 'A contract needs at least one read or benefit.'),
  'contract-not-signed': no(422, 'This contract is not signed yet.'),
  'contract-already-signed': no(422, 'This contract is signed already.'),
  'contract-already-ended': no(422, 'This contract has ended already.'),
  'contract-closed': no(422, 'This contract is closed.'),
  'price-without-rates': no(422, 'All rates are zero, so the price cannot be shared out. Give at least one line a rate.'),
  'at-most-below-at-least': no(422, 'The most cannot be below the least.'),
  'unknown-line': no(422, 'This contract has no such line.'),
  'line-already-there': no(422, 'This contract already has that line.'),
  'game-needed': no(422, 'This line counts game by game, so the game is needed.'),
  'not-counted-by-game': no(422, 'This line is not counted game by game.'),
  'not-counted-by-occurrence': no(422, 'This line is not counted by what happens in the game.'),
  'not-a-read': no(422, 'This line is another benefit, not a read.'),
  'not-a-benefit': no(422, 'This line is a read, not another benefit.'),
  'benefit-earns-over-days': no(422, 'This benefit earns over its days, not on delivery.'),
  'benefit-earns-on-delivery': no(422, 'This benefit earns on its delivery, not over days.'),

  // contracts: what happens to them
  'count-not-above-zero': no(422, 'Give a whole number above zero.'),
  'amount-not-above-zero': no(422, 'Give an amount above zero.'),
  'read-counted-twice': no(409, 'This read is counted already.'),
  'read-taken-back-already': no(409, 'This read is not counted, or was taken back already.'),
  'occurrence-counted-twice': no(409, 'This happening is counted already.'),
  'occurrence-taken-back-already': no(409, 'This happening is not counted, or was taken back already.'),
  'more-than-owed': no(422, 'Only {owed} are still owed on this line.'),
  'more-than-promised': no(422, 'Only {open} of this benefit are still to be delivered.'),
  'fewer-than-settled': no(422, 'Already {settled} are given or settled, so the promise cannot go below that.'),
  'value-without-reads': no(422, '{amount} would be left with no read to earn it.'),
  'more-than-open-value': no(422, 'Only {open} of the price is still open on this contract.'),
  'more-than-earned': no(422, 'Only {earned} was earned, so no more can be allowed for.'),
  'unknown-makegood': no(422, 'No such makegood was agreed.'),
  'makegood-all-given': no(422, 'All replacements of this makegood are given.'),
  'no-minimum-agreed': no(422, 'This contract names no least amount to bill.'),
  'price-is-per-read': no(422, 'This line is priced by the read, so an amendment cannot change its amount.'),
  'game-counted-as-played': no(409, 'This game is counted as played already.'),
  'game-not-counted-as-played': no(409, 'This game is not counted as played.'),
  'makegood-already-agreed': no(409, 'This makegood is agreed already.'),
  'delivery-counted-twice': no(409, 'This delivery is counted already.'),
  'delivery-taken-back-already': no(409, 'This delivery is not counted, or was taken back already.'),
  'invoice-issued-twice': no(409, 'This invoice is issued already.'),
  'more-given-than-promised': no(422, 'More were given before the start than were promised on this line.'),
  'more-paid-than-billed': no(422, 'More was paid before the start than was billed.'),
  'minimum-already-billed': no(422, 'The least amount is taken into the books already.'),
  'not-in-kind': no(422, 'This contract is not paid in goods.'),
  'nothing-overbilled': no(422, 'Nothing is billed beyond what was agreed.'),
  'memo-needed': no(422, '{amount} of this is billed already, so a credit memo is needed.'),
  'days-go-backwards': no(422, 'This benefit has earned through {throughOn} already.'),
  'close-with-reads-owed': no(422, 'Reads are still owed. Give, make good, credit or end them first.'),
  'close-with-open-value': no(422, 'The contract still has {open} that nothing has earned.'),
  'close-with-something-to-bill': no(422, '{toBill} is still to be billed or credited.'),
  'close-with-open-balance': no(422, 'Invoices or credits of this contract are still open.'),
  'contract-not-closed': no(422, 'This contract is not closed.'),

  // billing
  'seller-keeps-own-books': no(422, 'This seller of record keeps its books elsewhere; here only its reads are kept.'),
  'paid-in-goods': no(422, 'This contract is paid in goods. Record the goods received instead of an invoice.'),
  'opening-stays': no(422, 'This stands for what was billed or paid before the start, so it stays as it was taken over.'),
  'applied-twice': no(422, 'The same invoice stands there twice.'),
  'taking-back-is-final': no(422, 'A taking back stays. Apply the payment again instead.'),
  'nothing-to-bill': no(422, 'Nothing is due to be billed through {throughDay}.'),
  'more-than-to-bill': no(422, 'Only {toBill} of this contract is still to be billed.'),
  'unknown-invoice': no(404, 'There is no such invoice.'),
  'invoice-already-void': no(409, 'This invoice is void already.'),
  'invoice-is-void': no(422, 'This invoice is void.'),
  'void-after-payment': no(422, 'Something was paid on this invoice, so it cannot be voided. Take the payment back first, or write a credit memo.'),
  'void-after-credit': no(422, 'A credit or discount stands against this invoice, so it cannot be voided.'),
  'void-after-write-off': no(422, 'This invoice was written off, so it cannot be voided.'),
  'void-after-carry-over': no(422, 'Part of this invoice was carried into the next term, so it cannot be voided.'),
  'more-than-balance': no(422, 'Only {balance} is open on this invoice.'),
  'more-than-unapplied': no(422, 'Only {unapplied} of this credit is left.'),
  'payment-crosses-sellers': no(422, 'This payment went to another seller of record than the invoice.'),
  'payment-returned-already': no(409, 'This payment was returned already.'),
  'write-off-before-ending': no(422, 'End the part that was not earned first; only what was earned can be written off.'),
  'nothing-written-off': no(422, 'Nothing of this invoice was written off.'),
  'installments-without-shares': no(422, 'At least one installment needs a share above zero.'),

  // what the database itself says no to
  'application-of-nothing': no(422, 'Say which payment or which credit memo is applied, one of the two.'),
  'application-taken-back-already': no(409, 'This application was taken back already.'),
  'approval-incomplete': no(422, 'An approval needs its day and the name of who approved.'),
  'benefit-place-taken': no(409, 'Two benefits of the contract stand in the same place.'),
  'commitment-place-taken': no(409, 'Two commitments of the contract stand in the same place.'),
  'copy-version-taken': no(409, 'Somebody added a version of this copy at the same moment. Try again.'),
  'credit-memo-number-taken': no(409, 'A credit memo of that number is there already. Try again.'),
  'device-sequence-taken': no(409, 'This device already sent another entry with the same sequence number.'),
  'entry-counted-twice': no(409, 'This entry was counted already.'),
  'entry-written-twice': no(409, 'This was booked already.'),
  'event-place-taken': no(409, 'The contract changed at the same moment. Try again.'),
  'event-taken-back-already': no(409, 'This was taken back already.'),
  'game-already-on-the-night': no(409, 'The game is on this night already.'),
  'idempotency-key-taken': no(409, 'The same request was sent at the same moment. Ask again.'),
  'invoice-does-not-add-up': no(422, 'The gross of an invoice is its net plus its tax.'),
  'invoice-line-place-taken': no(409, 'Two lines of the invoice stand in the same place.'),
  'invoice-number-taken': no(409, 'An invoice of that number is there already. Try again.'),
  'link-token-taken': no(409, 'This link is there already. Make a new one.'),
  'log-number-taken': no(409, 'Somebody logged at the same moment. Send the entries again.'),
  'memo-does-not-add-up': no(422, 'The gross of a credit memo is its net plus its tax.'),
  'month-already-closed': no(409, 'This month is closed already.'),
  'number-series-taken': no(409, 'The next number was taken at the same moment. Try again.'),
  'packet-issue-taken': no(409, 'The packet was issued at the same moment. Look again.'),
  'participant-place-taken': no(409, 'Two teams stand in the same place of the game.'),
  'payment-number-taken': no(409, 'A payment of that number is there already. Try again.'),
  'placement-place-taken': no(409, 'Another read has this place already.'),
  'posting-to-itself': no(422, 'A posting moves from one account to another.'),
  'read-billed-twice': no(409, 'A read of this invoice was billed already.'),
  'seal-number-taken': no(409, 'The books were sealed at the same moment.'),
  'start-time-missing': no(422, 'Say when the game starts, or after which game.'),
  'team-plays-itself': no(422, 'A team cannot play against itself.'),
  'term-number-taken': no(409, 'The contract has a term of that number already.'),
  'two-home-teams': no(422, 'Only one team of a game is the home team.'),
  'unknown-benefit': no(422, 'The contract has no such benefit.'),
  'unknown-term': no(422, 'There is no such term.'),
  'unknown-event': no(422, 'There is no such event in the books.'),
  'unknown-happening': no(422, 'The mention names a happening that was not logged.'),
  'unknown-credit-memo': no(422, 'There is no such credit memo.'),
} as const satisfies Record<string, Refusal>;

export type RefusalCode = keyof typeof REFUSALS;

export function isRefusalCode(text: string): text is RefusalCode {
  return Object.hasOwn(REFUSALS, text);
}

export type RefusalDetails = Readonly<Record<string, string | number>>;

/** The sentence of a refusal with its placeholders filled; one that has no detail stays as it is written. */
export function sentenceOfRefusal(code: RefusalCode, details: RefusalDetails = {}): string {
  return REFUSALS[code].sentence.replace(/\{(\w+)\}/g, (whole, name: string) =>
    name in details ? String(details[name]) : whole,
  );
}

/** A "no" with its code; `errors` is nested in the shape of the form it answers. */
export class Refused extends Error {
  override readonly name = 'Refused';

  constructor(
    readonly code: RefusalCode,
    readonly details: RefusalDetails = {},
    readonly errors?: Readonly<Record<string, unknown>>,
  ) {
    super(sentenceOfRefusal(code, details));
  }
}

/** @throws Refused always */
export function refuse(code: RefusalCode, details: RefusalDetails = {}, errors?: Readonly<Record<string, unknown>>): never {
  throw new Refused(code, details, errors);
}
