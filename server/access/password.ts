import { hash, verify } from '@node-rs/argon2';

const COST = { memoryCost: 19_456, timeCost: 2, parallelism: 1 };
const AT_ONCE = 2;

let running = 0;
const waiting: (() => void)[] = [];

/** At most two at once: each takes 19 MiB and most of a core. Never inside a unit of work. */
async function inTurn<T>(job: () => Promise<T>): Promise<T> {
  while (running >= AT_ONCE) await new Promise<void>((resolve) => waiting.push(resolve));
  running += 1;
  try {
    return await job();
  } finally {
    running -= 1;
    waiting.shift()?.();
  }
}

/** @source OWASP Password Storage Cheat Sheet, argon2id with 19 MiB, two passes, one lane (from memory) */
export async function hashPassword(password: string): Promise<string> {
  return inTurn(() => hash(password.normalize('NFC'), COST));
}

export async function isPassword(password: string, passwordHash: string): Promise<boolean> {
  return inTurn(() => verify(passwordHash, password.normalize('NFC')));
}

/** A hash nobody's password has, so that an unknown person takes as long to refuse as a known one. */
export const NOBODYS_HASH =
  '$argon2id$v=19$m=19456,t=2,p=1$c29tZXNhbHR0aGF0aXNsb25n$3mV2G0bU6bB0Wb8zXh5nRrVbQ0o0m0p8Hj9j0Zq1y2s';
