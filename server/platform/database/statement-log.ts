import { appendFileSync } from 'node:fs';
import type { Logger } from 'typeorm';

/** Writes each different statement once, so that a test can read what a whole run sent to the database. */
export class StatementLog implements Logger {
  private readonly seen = new Set<string>();

  constructor(private readonly file: string) {}

  logQuery(statement: string): void {
    const text = statement.replace(/\s+/g, ' ').replace(/'[0-9a-f-]{36}'/g, "'…'");
    if (this.seen.has(text)) return;
    this.seen.add(text);
    appendFileSync(this.file, `${text}\n`);
  }

  logQueryError(): void {}
  logQuerySlow(): void {}
  logSchemaBuild(): void {}
  logMigration(): void {}
  log(): void {}
}
