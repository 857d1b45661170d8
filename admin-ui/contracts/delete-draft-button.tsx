import { useRedirect } from 'react-admin';
import { CommandButton } from '../forms/command-button.tsx';
import type { Contract } from './types.ts';

export function DeleteDraftButton({ contract }: { contract: Contract }) {
  const redirect = useRedirect();
  return (
    <CommandButton
      label="Throw the draft away"
      title={`Throw ${contract.title} away?`}
      explains="The draft is removed. A signed contract can never be removed."
      path={`/contracts/${contract.id}`}
      method="DELETE"
      version={contract.version}
      confirmLabel="Throw it away"
      color="error"
      success="The draft is gone."
      leaves
      onDone={() => redirect('list', 'contracts')}
    />
  );
}
