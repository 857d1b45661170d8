import type { CallGroup, CallReason } from '../../domain/sponsorship/call-list.ts';
import type { Day } from '../../domain/day.ts';
import { DayField, IdField } from '../../platform/http/fields.ts';
import { QueryFlag } from '../../platform/http/lists.ts';
import type { SponsorContactView } from './sponsor-contact.dto.ts';

export class CallsQuery {
  @DayField({ optional: true, description: 'A day of the week that is asked for, Monday through Sunday; without one, the week of today' }) weekOf?: Day;
  @IdField({ optional: true, description: 'Whose calls' }) callerPersonId?: string;
  @QueryFlag() isNobodys?: boolean;
}

/** A sponsor to call, with what one wants to know before the telephone is picked up. */
export interface CallView {
  sponsorId: string;
  sponsorName: string;
  sayAs: string | null;
  categoryName: string;
  contactName: string | null;
  phone: string | null;
  email: string | null;
  callerPersonId: string | null;
  callerName: string | null;
  lostOn: string | null;
  group: CallGroup;
  on: string | null;
  reasons: readonly CallReason[];
  lastContact: Pick<SponsorContactView, 'contactedOn' | 'how' | 'withWhom' | 'what'> | null;
}

export interface CallsView {
  /** Monday */
  from: string;
  /** Sunday */
  through: string;
  today: string;
  /** in the order in which to call */
  calls: CallView[];
  /** who has calls at all, for the filter */
  callers: { personId: string; name: string }[];
}
