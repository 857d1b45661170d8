import { Global, Module } from '@nestjs/common';
import { Typesetter } from './typesetter.ts';

/** One typesetter for the whole process; it ends with the server. */
@Global()
@Module({ providers: [{ provide: Typesetter, useFactory: () => new Typesetter() }], exports: [Typesetter] })
export class TypesettingModule {}
