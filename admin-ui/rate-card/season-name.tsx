import { useReference } from 'react-admin';
import type { Season } from '../seasons/types.ts';

export function SeasonName({ id }: { id: string }) {
  const { referenceRecord } = useReference<Season>({ reference: 'seasons', id });
  return <>{referenceRecord?.name ?? '…'}</>;
}
