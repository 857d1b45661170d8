import { ContractCarrying } from './contract-carrying.service.ts';
import { RollOverFacts } from './roll-over-facts.service.ts';
import { RollOverController } from './roll-over.controller.ts';
import { RollOver } from './roll-over.service.ts';
import { RolledContracts } from './rolled-contracts.service.ts';
import { SeasonCopy } from './season-copy.service.ts';

/** What the module of sponsorship is told of rolling a season over. */
export const rollOverControllers = [RollOverController];

export const rollOverServices = [RolledContracts, SeasonCopy, ContractCarrying, RollOverFacts, RollOver];
