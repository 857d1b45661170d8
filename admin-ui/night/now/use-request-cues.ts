import { requestCues } from './request-cues.ts';
import type { RequestCue } from './request-cues.ts';

export function useRequestCues(): readonly RequestCue[] {
  return requestCues();
}
