import { makeApplication } from './application.ts';
import { ConfigError, readConfig } from './platform/config/config.ts';
import { makeLog } from './platform/log/log.ts';

/** Starts the server. A refusal to start is one sentence and exit code 1. */
async function main(): Promise<void> {
  const config = readConfig(process.env);
  const log = makeLog(config.logLevel);
  const app = await makeApplication(config, log);
  await app.listen(config.port, config.host);
  const address = app.getHttpServer().address() as { port: number };
  log.info({ port: address.port }, 'listening');
  process.send?.({ listening: address.port });
}

main().catch((error: unknown) => {
  const sentence = error instanceof ConfigError ? error.message : String((error as Error)?.stack ?? error);
  process.stderr.write(`Rafterline does not start: ${sentence}\n`);
  process.exitCode = 1;
  setTimeout(() => process.exit(1), 100).unref();
});
