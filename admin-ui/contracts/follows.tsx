import { Go } from '../fields/go.tsx';
import type { Contract } from './types.ts';

/** "Year 2 of 3, after C-2027-0001", or the contract that a renewal follows. */
export function Follows({ contract }: { contract: Contract }) {
  const before = <Go resource="contracts" id={contract.followsContractId}>{contract.followsContractNumber ?? 'the contract before'}</Go>;
  return contract.followsAs === 'year' ? <>Year {contract.yearNumber} of {contract.years}, after {before}</> : <>A renewal of {before}</>;
}

/** The contract of the next season. */
export function FollowedBy({ contract }: { contract: Contract }) {
  const year = contract.followedByAs === 'year' ? `, year ${contract.yearNumber + 1} of ${contract.years}` : '';
  return <><Go resource="contracts" id={contract.followedByContractId}>{contract.followedByContractNumber ?? (contract.followedByAs === 'year' ? 'A draft of the next year' : 'A draft of a renewal')}</Go>{year}</>;
}
