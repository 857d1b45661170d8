import { createHash, randomBytes, randomUUID } from 'node:crypto';
import { baseUrl as sharedUrl } from './database.ts';

/** What came back: the status, the body as JSON where it is some, and the headers. */
export interface Answer<Body = any> {
  status: number;
  body: Body;
  headers: Headers;
}

export interface Sending {
  /** the version that the change was made from */
  version?: number;
  /** the Idempotency-Key; one is made where none is given */
  key?: string;
  headers?: Record<string, string>;
}

export function newToken(): { token: string; tokenHash: string } {
  const token = randomBytes(32).toString('base64url');
  return { token, tokenHash: createHash('sha256').update(token).digest('hex') };
}

/** Somebody at a browser: sends requests with their session, or with what a link gave them. */
export class Visitor {
  constructor(
    readonly personId: string,
    readonly token: string | null,
    readonly baseUrl: string = sharedUrl,
    readonly linkCookie: string | null = null,
  ) {}

  get cookie(): string {
    const name = `rafterline-${new URL(this.baseUrl).port}`;
    return [this.token && `${name}=${this.token}`, this.linkCookie && `${name}-link=${this.linkCookie}`].filter(Boolean).join('; ');
  }

  /** Clicks Start on a link: whoever comes back carries its cookie and no session. */
  static async byLink(token: string, baseUrl: string = sharedUrl, pin?: string): Promise<Visitor> {
    const answer = await new Visitor('bearer of a link', null, baseUrl).post('/api/link-visits', { token, pin });
    worked(answer, '/api/link-visits');
    return new Visitor('bearer of a link', null, baseUrl, linkCookieIn(answer));
  }

  /** Clicks Start on the address of a night's table and types the PIN. */
  static async atTable({ address, pin }: { address: string; pin: string }, baseUrl: string = sharedUrl): Promise<Visitor> {
    return Visitor.byLink(address.split('/').at(-1)!, baseUrl, pin);
  }

  /** Opens the desk of a night: who comes back has both, the session and the own link of the table. */
  async opensTable(nightId: string): Promise<Visitor> {
    const answer = await this.post('/api/table/open', { nightId });
    worked(answer, '/api/table/open');
    return new Visitor(this.personId, this.token, this.baseUrl, linkCookieIn(answer) ?? this.linkCookie);
  }

  async get<Body = any>(path: string): Promise<Answer<Body>> {
    return this.send('GET', path, undefined);
  }

  async post<Body = any>(path: string, body: unknown = {}, sending: Sending = {}): Promise<Answer<Body>> {
    return this.send('POST', path, body, { key: randomUUID(), ...sending });
  }

  async patch<Body = any>(path: string, body: unknown, sending: Sending = {}): Promise<Answer<Body>> {
    return this.send('PATCH', path, body, sending);
  }

  async put<Body = any>(path: string, body: unknown, sending: Sending = {}): Promise<Answer<Body>> {
    return this.send('PUT', path, body, sending);
  }

  async remove(path: string): Promise<Answer> {
    return this.send('DELETE', path, undefined);
  }

  /** Sends and expects it to work; anything else fails the test with what the server said. */
  async make<Body = any>(path: string, body: unknown = {}): Promise<Body> {
    return worked(await this.post<Body>(path, body), path);
  }

  async look<Body = any>(path: string): Promise<Body> {
    return worked(await this.get<Body>(path), path);
  }

  async bytes(path: string): Promise<{ status: number; bytes: Buffer; headers: Headers }> {
    const response = await fetch(this.baseUrl + path, { headers: { cookie: this.cookie } });
    return { status: response.status, bytes: Buffer.from(await response.arrayBuffer()), headers: response.headers };
  }

  async send<Body = any>(method: string, path: string, body: unknown, sending: Sending = {}): Promise<Answer<Body>> {
    const response = await fetch(this.baseUrl + path, {
      method,
      redirect: 'manual',
      headers: {
        ...(this.cookie ? { cookie: this.cookie } : {}),
        'x-rafterline': '1',
        ...(body === undefined ? {} : { 'content-type': 'application/json' }),
        ...(sending.version === undefined ? {} : { 'if-match': `"${sending.version}"` }),
        ...(sending.key === undefined ? {} : { 'idempotency-key': sending.key }),
        ...sending.headers,
      },
      ...(body === undefined ? {} : { body: typeof body === 'string' ? body : JSON.stringify(body) }),
    });
    // A stream of news has no end to wait for.
    if (response.headers.get('content-type')?.startsWith('text/event-stream')) {
      await response.body?.cancel();
      return { status: response.status, body: '' as Body, headers: response.headers };
    }
    const text = await response.text();
    const isJson = /json/.test(response.headers.get('content-type') ?? '');
    return { status: response.status, body: (isJson && text !== '' ? JSON.parse(text) : text) as Body, headers: response.headers };
  }
}

function linkCookieIn(answer: Answer): string | null {
  return /-link=([^;]+)/.exec(answer.headers.get('set-cookie') ?? '')?.[1] ?? null;
}

export function worked<Body>(answer: Answer<Body>, path: string): Body {
  if (answer.status >= 300) throw new Error(`${path} answered ${answer.status}: ${JSON.stringify(answer.body)}`);
  return answer.body;
}
