import type { PublicRequestKind, RequestFields } from '../../../server/domain/night/desk/requests/request.ts';
import type { FieldSentences } from '../../../server/domain/night/desk/requests/request-form.ts';
import type { AskFormView } from '../../../server/night/requests/request.dto.ts';

export type Asked =
  | { readonly is: 'sent' }
  | { readonly is: 'closed' }
  | { readonly is: 'wait'; readonly sentence: string }
  | { readonly is: 'again'; readonly sentence: string; readonly sentences: FieldSentences };

const HEADERS = { 'content-type': 'application/json', 'x-rafterline': '1' };
const NO_ANSWER = 'The network did not answer. Try again; what you typed is still here.';

/** What the form of this code asks; null where it opens nothing. @throws where the network does not answer */
export async function readAskForm(token: string): Promise<AskFormView | null> {
  const answer = await fetch(`/api/ask/${token}`, { headers: HEADERS });
  if (answer.status >= 500) throw new Error(NO_ANSWER);
  return answer.ok ? ((await answer.json()) as AskFormView) : null;
}

/** Sends a request; with the same id it may be sent again, and is one. */
export async function sendRequest(token: string, request: { id: string; kind: PublicRequestKind; fields: RequestFields; website: string }): Promise<Asked> {
  const answer = await fetch(`/api/ask/${token}`, { method: 'POST', headers: HEADERS, body: JSON.stringify(request) }).catch(() => null);
  if (!answer || answer.status >= 500) return { is: 'again', sentence: NO_ANSWER, sentences: {} };
  if (answer.ok) return { is: 'sent' };
  const problem = (await answer.json().catch(() => ({}))) as { detail?: string; errors?: { fields?: FieldSentences } };
  if (answer.status === 429) return { is: 'wait', sentence: problem.detail ?? 'Many requests came in a short time. Try again in ten minutes.' };
  if (answer.status === 400) return { is: 'again', sentence: 'Look at the marked fields.', sentences: problem.errors?.fields ?? {} };
  return { is: 'closed' };
}
