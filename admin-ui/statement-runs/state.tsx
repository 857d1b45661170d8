import { Tag } from '../fields/tag.tsx';
import type { StatementRun } from './types.ts';

export function StatementRunState({ run }: { run: StatementRun }) {
  if (run.state === 'done') return <Tag mood={run.failed > 0 ? 'care' : 'good'}>{run.failed > 0 ? 'Done, not for all' : 'Done'}</Tag>;
  if (run.state === 'cancelled') return <Tag mood="plain">Stopped</Tag>;
  return run.isRunning ? <Tag mood="plain">Running</Tag> : <Tag mood="care">Waiting for the server</Tag>;
}
