import { useMemo } from 'react';
import { requestCue, requestLine } from '../../../server/domain/night/desk/requests/request-text.ts';
import { useDesk } from '../desk.ts';
import { useRequests } from '../requests/use-requests.ts';
import type { RequestCue } from './request-cues.ts';

const NOT_OF_THE_PACKET = {
  number: 0, gameId: null, window: null, windowKey: null, language: 'en', second: null, isSponsored: false, placementId: null, commitmentId: null, sponsorName: null,
  sponsorSayAs: null, startsText: null, whoText: null, caution: null, usesFallback: false, priority: 2, moment: 'vehicleNotice',
} as const;

/** The requests that were approved and wait to be read, each with the right script filled in. */
export function useRequestCues(): readonly RequestCue[] {
  const { requestScripts, settings } = useDesk().bundle;
  const { approved } = useRequests();
  return useMemo(() => approved.map((request) => {
    const { title, segments, seconds } = requestCue(request, requestScripts, settings.wordsPerMinute);
    const cue = { ...NOT_OF_THE_PACKET, code: 'R', cueKey: `request:${request.id}`, title: `${title}: ${requestLine(request.kind, request.fields)}`, segments, seconds };
    return { cue, requestId: request.id, isOpen: true };
  }), [approved, requestScripts, settings.wordsPerMinute]);
}
