import type { Standing } from '../../domain/sponsorship/standing.ts';
import type { ReadsOfSponsor } from './contracts-of-sponsor.dto.ts';

/** The columns of the ledger in a sponsor's words; what was carried is told apart by its way. */
export function readsOfSponsor(standing: Standing): ReadsOfSponsor {
  const { promised, given, madeGood, credited, released, carried, owed, extra, loggedNotSignedOff } = standing;
  return {
    promised, given, madeGood, credited,
    noLongerDue: released,
    carriedOver: Math.max(0, carried),
    cameOver: Math.max(0, -carried),
    stillToCome: owed,
    extra,
    notConfirmed: loggedNotSignedOff,
  };
}
