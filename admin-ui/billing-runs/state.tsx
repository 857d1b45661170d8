import { Tag } from '../fields/tag.tsx';
import type { BillingRun } from './types.ts';

export function RunState({ run }: { run: BillingRun }) {
  if (run.isFinished) return <Tag mood="good">Done</Tag>;
  return run.isRunning ? <Tag mood="plain">Running</Tag> : <Tag mood="care">Broken off</Tag>;
}
