import { HttpError } from 'react-admin';

interface Problem {
  title?: string;
  detail?: string;
  sentence?: string;
  code?: string;
  errors?: Record<string, unknown>;
}

export interface Asked {
  method?: 'GET' | 'POST' | 'PATCH' | 'PUT' | 'DELETE';
  body?: unknown;
  version?: number;
  idempotencyKey?: string;
  /** given when the answer is no longer waited for */
  signal?: AbortSignal;
}

/**
 * A key (UUID version 4) made once for a form, so that sending it twice moves the money once. `crypto.randomUUID`
 * is missing where a page comes over plain http.
 */
export function newKey(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  bytes[6] = (bytes[6]! & 0x0f) | 0x40;
  bytes[8] = (bytes[8]! & 0x3f) | 0x80;
  return [...bytes]
    .map((byte, place) => ([4, 6, 8, 10].includes(place) ? '-' : '') + byte.toString(16).padStart(2, '0'))
    .join('');
}

/**
 * Asks the server below `/api`. A refusal becomes react-admin's HttpError, its `errors` in the form's shape,
 * so that each sentence stands under the field it is about.
 */
export async function ask<T>(path: string, asked: Asked = {}): Promise<T> {
  const headers: Record<string, string> = { Accept: 'application/json', 'X-Rafterline': '1' };
  if (asked.body !== undefined) headers['Content-Type'] = 'application/json';
  if (asked.version !== undefined) headers['If-Match'] = `"${asked.version}"`;
  if (asked.idempotencyKey) headers['Idempotency-Key'] = asked.idempotencyKey;
  const response = await fetch(`/api${path}`, {
    method: asked.method ?? 'GET',
    headers,
    credentials: 'same-origin',
    ...(asked.body === undefined ? {} : { body: JSON.stringify(asked.body) }),
    ...(asked.signal ? { signal: asked.signal } : {}),
  }).catch((failure: unknown) => {
    if (asked.signal?.aborted) throw failure;
    throw new HttpError('The server does not answer. Look at the network connection and try again.', 0, {});
  });
  const text = await response.text();
  const parsed = text ? readJson(text) : {};
  if (response.ok) return parsed as T;
  const problem = parsed as Problem;
  if (problem.errors) problem.errors = asSentences(problem.errors);
  throw new HttpError(problem.detail ?? problem.sentence ?? problem.title ?? sentenceOf(response.status), response.status, problem);
}

/** The server says what a field is or lacks; under the field that reads as a sentence. */
function asSentences(errors: Record<string, unknown>): Record<string, unknown> {
  return Object.fromEntries(
    Object.entries(errors).map(([field, error]) => {
      if (error !== null && typeof error === 'object') return [field, asSentences(error as Record<string, unknown>)];
      const text = String(error);
      return [field, /^(is|has|holds|cannot)\b/.test(text) ? `This ${text}${/[.?!]$/.test(text) ? '' : '.'}` : text];
    }),
  );
}

function readJson(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return {};
  }
}

function sentenceOf(status: number): string {
  if (status === 404) return 'This is not here, or not yours to see.';
  if (status === 412) return 'Someone changed this while you had it open. Load the page again and repeat your change.';
  if (status === 429) return 'Too many tries. Wait a moment and try again.';
  return 'The server could not do this. Try again; if it stays so, tell the person who runs the server.';
}
