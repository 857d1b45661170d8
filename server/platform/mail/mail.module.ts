import { Global, Inject, Module } from '@nestjs/common';
import type { OnApplicationBootstrap } from '@nestjs/common';
import { CONFIG } from '../config/config.ts';
import type { Config } from '../config/config.ts';
import { LOG } from '../log/log.ts';
import type { Log } from '../log/log.ts';
import { MailSender } from './mail-sender.ts';

/** How letters leave the house. */
@Global()
@Module({
  providers: [{ provide: MailSender, inject: [CONFIG], useFactory: (config: Config) => new MailSender(config) }],
  exports: [MailSender],
})
export class MailModule implements OnApplicationBootstrap {
  constructor(
    @Inject(MailSender) private readonly sender: MailSender,
    @Inject(LOG) private readonly log: Log,
  ) {}

  onApplicationBootstrap(): void {
    this.log.info(this.sender.where, 'letters go out');
  }
}
