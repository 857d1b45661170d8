import { Global, Inject, Module } from '@nestjs/common';
import type { DynamicModule, OnApplicationShutdown } from '@nestjs/common';
import { DataSource } from 'typeorm';
import type { EntitySchema } from 'typeorm';
import { CONFIG } from '../config/config.ts';
import type { Config } from '../config/config.ts';
import { SnakeCase } from './naming.ts';
import { Notices } from './notices.ts';
import { StatementLog } from './statement-log.ts';
import { setTypeParsers } from './types.ts';
import { UnitOfWork } from './unit-of-work.ts';

type Entities = readonly (Function | EntitySchema)[];

@Global()
@Module({})
export class DatabaseModule implements OnApplicationShutdown {
  constructor(@Inject(DataSource) private readonly source: DataSource) {}

  static holding(entities: Entities): DynamicModule {
    return {
      module: DatabaseModule,
      providers: [
        { provide: DataSource, inject: [CONFIG], useFactory: (config: Config) => openDatabase(config, entities) },
        UnitOfWork,
        Notices,
      ],
      exports: [DataSource, UnitOfWork, Notices],
    };
  }

  async onApplicationShutdown(): Promise<void> {
    if (this.source.isInitialized) await this.source.destroy();
  }
}

/** @throws Error when the server would lose what it acknowledged: safe writing is switched off */
export async function openDatabase(config: Config, entities: Entities): Promise<DataSource> {
  setTypeParsers();
  const source = new DataSource({
    type: 'postgres',
    url: config.databaseUrl,
    entities: [...entities],
    namingStrategy: new SnakeCase(),
    synchronize: false,
    logging: config.statementLog ? ['query'] : false,
    ...(config.statementLog ? { logger: new StatementLog(config.statementLog) } : {}),
    extra: {
      max: config.databasePoolSize,
      options: '-c timezone=UTC -c lock_timeout=5000 -c statement_timeout=15000 -c idle_in_transaction_session_timeout=60000',
    },
  });
  await source.initialize();
  await refuseUnsafeSettings(source);
  return source;
}

async function refuseUnsafeSettings(source: DataSource): Promise<void> {
  const rows: { name: string; setting: string }[] = await source.query(
    `select name, setting from pg_settings where name in ('fsync', 'full_page_writes', 'synchronous_commit')`,
  );
  const off = rows.filter((row) => row.setting === 'off').map((row) => row.name);
  if (off.length === 0) return;
  await source.destroy();
  throw new Error(`this PostgreSQL may lose what was acknowledged: ${off.join(', ')} must not be off`);
}
