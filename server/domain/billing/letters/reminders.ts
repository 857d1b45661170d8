/** How long after its day a reminder still goes out; what could not go by then is left out, so that nothing old goes out at once. */
export const REMINDER_GOES_WITHIN_DAYS = 7;

/**
 * Which reminder of an invoice goes out today: the latest whose day has come, once. One that was overtaken by a later
 * one never goes, so that nobody gets two on one day.
 *
 * @param daysPastDue whole days since the due day; zero or less: not past due
 * @param reminderDays the department's days after the due day, in any order; none: no reminders
 * @param written those of this invoice that were written already
 * @returns the days of that reminder, or null for none
 * @source common practice, no source
 */
export function reminderDue(daysPastDue: number, reminderDays: readonly number[], written: readonly number[]): number | null {
  const come = reminderDays.filter((days) => days >= 1 && days <= daysPastDue);
  if (come.length === 0) return null;
  const latest = Math.max(...come);
  if (daysPastDue - latest >= REMINDER_GOES_WITHIN_DAYS) return null;
  return written.some((days) => days >= latest) ? null : latest;
}

/** What is known of an unpaid invoice besides its days. */
export interface Remindable {
  /** null where the payer has none */
  readonly address: string | null;
  readonly isHeld: boolean;
  readonly isTakenOver: boolean;
}

/** Why no reminder goes out by itself; null when nothing speaks against it. */
export function whyNoReminder({ address, isHeld, isTakenOver }: Remindable): string | null {
  if (isTakenOver) return 'It was billed before the start here, so there is no copy to attach. Write by hand.';
  if (isHeld) return 'Its contract is held.';
  if (address === null) return 'The payer has no e-mail address.';
  return null;
}
