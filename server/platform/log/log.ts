import { pino } from 'pino';
import type { LoggerService } from '@nestjs/common';

export type Log = ReturnType<typeof makeLog>;
export const LOG = Symbol('log');

/** JSON lines with a request id; never a name, a token, an address' query or a body. */
export function makeLog(level: string) {
  return pino({
    level,
    base: null,
    timestamp: () => `,"at":"${new Date().toISOString()}"`,
    formatters: { level: (label) => ({ level: label }) },
  });
}

/** What Nest itself says, in the same lines. */
export class NestLog implements LoggerService {
  constructor(private readonly to: Log) {}

  log(message: unknown): void {
    this.to.debug(String(message));
  }

  error(message: unknown, trace?: unknown): void {
    this.to.error({ trace: String(trace ?? '') }, String(message));
  }

  warn(message: unknown): void {
    this.to.warn(String(message));
  }

  debug(): void {}
  verbose(): void {}
}
