import { useWatch } from 'react-hook-form';
import { ChoiceInput } from '../../inputs/choice-input.tsx';
import { CountInput } from '../../inputs/count-input.tsx';
import { PickInput } from '../../inputs/pick-input.tsx';
import type { Commitment, Contract } from '../types.ts';

const owedOf = (commitment: Commitment) => commitment.standing?.owed ?? 0;

/** Commitments that still owe reads, as choices. */
export function owing(contract: Contract) {
  return (contract.commitments ?? []).filter((one) => owedOf(one) > 0).map((one) => ({ id: one.id, name: `${one.readKindName}: ${owedOf(one)} owed` }));
}

export const countsByGame = (contract: Contract, commitmentId: unknown): boolean => {
  const counting = contract.commitments?.find((one) => one.id === commitmentId)?.counting;
  return counting === 'perGame' || counting === 'perNight';
};

/** Which reads, of which game where they are counted so, and how many. */
export function ReadsFields({ contract, count = 'count', countLabel = 'How many', anyGame = false }: { contract: Contract; count?: string; countLabel?: string; anyGame?: boolean }) {
  const commitmentId = useWatch({ name: 'commitmentId' }) as string | undefined;
  const byGame = countsByGame(contract, commitmentId);
  return (
    <>
      <ChoiceInput source="commitmentId" label="Reads" choices={owing(contract)} required />
      {(byGame || anyGame) && <PickInput source="gameId" reference="games" label={byGame ? 'Of which game' : 'Missed in which game'} shows="label" sort={{ field: 'playedOn', order: 'ASC' }} filter={{ seasonId: contract.term.seasonId }} required={byGame} />}
      <CountInput source={count} label={countLabel} min={1} required />
    </>
  );
}
