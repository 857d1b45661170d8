import 'reflect-metadata';
import { NestFactory } from '@nestjs/core';
import { AppModule } from '../server/app.module.ts';
import { dayAt, instantOf } from '../server/domain/instant.ts';
import { readConfig } from '../server/platform/config/config.ts';
import { NOWHERE } from '../server/platform/database/scope.ts';
import { UnitOfWork } from '../server/platform/database/unit-of-work.ts';
import { NestLog, makeLog } from '../server/platform/log/log.ts';
import { Calendar } from './calendar.ts';
import { writeExamples } from './examples.ts';
import { ZONE, openDepartment, signInLines } from './people.ts';
import { Story } from './story.ts';
import { tellSeason } from './telling.ts';

/** Tells the demo season into an empty database and prints the sign-ins and the way to a sponsor's page, one JSON object a line. */
async function main(): Promise<void> {
  const log = makeLog('warn');
  const config = readConfig(process.env);
  const app = await NestFactory.createApplicationContext(AppModule.with(config, log), { logger: new NestLog(log), abortOnError: false });
  try {
    const work = app.get(UnitOfWork);
    const [found] = await work.runAs(NOWHERE, () => work.sqlEverywhere<{ departments: number }>('select count(*)::int as departments from department'));
    if (found && found.departments > 0) throw new Error('the demo season is only told into an empty database');
    const scopes = await openDepartment(work);
    const today = dayAt(instantOf(new Date().toISOString()), ZONE);
    const calendar = new Calendar(today);
    const told = await tellSeason(new Story(app, scopes, calendar, ZONE));
    writeExamples(config.dataFolder, calendar);
    for (const line of [...signInLines(), JSON.stringify(told)]) process.stdout.write(`${line}\n`);
  } finally {
    await app.close();
  }
}

main().catch((error: unknown) => {
  const told = error as { details?: unknown; errors?: unknown; stack?: string };
  process.stderr.write(`The demo season cannot be told: ${told.stack ?? String(error)}\n${JSON.stringify({ details: told.details, errors: told.errors })}\n`);
  process.exitCode = 1;
});
