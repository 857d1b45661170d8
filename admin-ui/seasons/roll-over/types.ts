export type { CarriesOn, RolledContract, RolledPrice, RolledTeam, RollOverView } from '../../../server/sponsorship/rollover/roll-over.dto.ts';
export type { ContractChoice } from '../../../server/domain/sponsorship/rollover/fate.ts';
