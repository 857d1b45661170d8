import { simpleParser } from 'mailparser';
import type { ParsedMail } from 'mailparser';
import { SMTPServer } from 'smtp-server';

/** How a mail server answers: to an address, and to a whole letter. */
export interface Manner {
  /** null: it takes the address */
  address?(address: string, time: number): { code: number; says: string } | null;
  /** 'hangUp': the letter is read to its end, and then the line is cut without an answer */
  letter?(time: number): { code: number; says: string } | 'hangUp' | null;
}

/** A real mail server on this machine that keeps what it was given. */
export interface MailServer {
  readonly url: string;
  /** letters that it said yes to */
  readonly taken: ParsedMail[];
  /** letters that it read to their end, whatever it said */
  readonly read: { mail: ParsedMail; text: string; to: string[] }[];
  /** how it answers from now on */
  behave(manner: Manner): void;
  /** forgets what it was given and answers yes to everything */
  begin(): void;
  close(): Promise<void>;
}

const refusal = ({ code, says }: { code: number; says: string }) => Object.assign(new Error(says), { responseCode: code });

export async function aMailServer(): Promise<MailServer> {
  const taken: ParsedMail[] = [];
  const read: MailServer['read'] = [];
  let manner: Manner = {};
  let times = { address: 0, letter: 0 };
  const server: SMTPServer = new SMTPServer({
    disabledCommands: ['AUTH', 'STARTTLS'],
    onRcptTo({ address }, _session, answer) {
      const no = manner.address?.(address, ++times.address);
      answer(no ? refusal(no) : null);
    },
    onData(stream, session, answer) {
      const parts: Buffer[] = [];
      stream.on('data', (part: Buffer) => parts.push(part));
      stream.on('end', async () => {
        const text = Buffer.concat(parts).toString('utf8');
        const mail = await simpleParser(text);
        read.push({ mail, text, to: session.envelope.rcptTo.map((one) => one.address) });
        const how = manner.letter?.(++times.letter) ?? null;
        if (how === 'hangUp') return hangUp(server);
        if (how) return answer(refusal(how));
        taken.push(mail);
        answer(null);
      });
    },
  });
  server.on('error', () => {});
  await new Promise<void>((done) => server.listen(0, '127.0.0.1', done));
  const { port } = server.server.address() as { port: number };
  const behave = (next: Manner) => {
    manner = next;
    times = { address: 0, letter: 0 };
  };
  const begin = () => {
    taken.length = 0;
    read.length = 0;
    behave({});
  };
  const close = () => new Promise<void>((done) => server.close(() => done()));
  return { url: `smtp://127.0.0.1:${port}`, taken, read, behave, begin, close };
}

function hangUp(server: SMTPServer): void {
  for (const connection of (server as unknown as { connections: Set<{ _socket: { destroy(): void } }> }).connections) connection._socket.destroy();
}
