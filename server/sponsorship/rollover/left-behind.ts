import type { ContractChoice } from '../../domain/sponsorship/rollover/fate.ts';
import type { ContractView } from '../contract-view.ts';

/** What of a contract does not come along into the next season, in sentences. */
export function whatIsLeftBehind(contract: ContractView, choice: ContractChoice, openDisputes: number): string[] {
  const days = new Set(contract.commitments.flatMap((line) => line.blackoutDays)).size;
  const games = new Set(contract.commitments.flatMap((line) => line.pinnedGameIds)).size;
  const rights = contract.exclusivities.filter((right) => right.reach === 'game').length;
  return [
    ...(days > 0 ? [`${counted(days, 'day')} without reads ${days === 1 ? 'is' : 'are'} not taken along: ask the sponsor for new ones.`] : []),
    ...(games > 0 ? [`${counted(games, 'game')} promised aloud ${games === 1 ? 'is' : 'are'} not taken along: promise new ones when the schedule is there.`] : []),
    ...(rights > 0 ? [`${counted(rights, 'exclusive right')} over named games ${rights === 1 ? 'is' : 'are'} not taken along.`] : []),
    ...(contract.purchaseOrderNumber ? [`The purchase order ${contract.purchaseOrderNumber} is not taken along: ask for a new one.`] : []),
    ...(openDisputes > 0 ? [`${counted(openDisputes, 'question')} of the sponsor ${openDisputes === 1 ? 'is' : 'are'} not answered yet. The answer stays with this season.`] : []),
    ...(choice === 'renew' && contract.categoryException ? ['The exception for its category was for this contract: it is asked for anew at signing.'] : []),
    ...(choice === 'carryOn' && contract.hold ? [`On hold since ${contract.hold.heldOn}: ${contract.hold.reason}`] : []),
  ];
}

const counted = (number: number, one: string): string => `${number} ${number === 1 ? one : `${one}s`}`;
