import { dayText } from '../format/day.ts';
import type { CompanyException, Exclusivity } from './types.ts';

/** "Hardware at Tamarack Ridge, at halftime: Nov 20, 2026 to Mar 13, 2027", a line for each right. */
export const rightsText = (rights: readonly Exclusivity[] = []): string =>
  rights.map((one) => `${one.words}: ${dayText(one.startsOn)} to ${dayText(one.endsOn)}`).join('\n');

/** "Past Juniper & Pike Hardware: both agreed. Approved by the school board, Nov 12, 2026", a line for each exception. */
export const exceptionsText = (exceptions: readonly CompanyException[] = []): string =>
  exceptions.map((one) => `Past ${one.against}: ${one.reason}. Approved by ${one.approvedByName}, ${dayText(one.approvedOn)}`).join('\n');
