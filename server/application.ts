import 'reflect-metadata';
import { ValidationPipe } from '@nestjs/common';
import { NestFactory } from '@nestjs/core';
import { FastifyAdapter } from '@nestjs/platform-fastify';
import type { NestFastifyApplication } from '@nestjs/platform-fastify';
import { DocumentBuilder, SwaggerModule } from '@nestjs/swagger';
import type { FastifyInstance } from 'fastify';
import cookie from '@fastify/cookie';
import { AppModule } from './app.module.ts';
import type { Config } from './platform/config/config.ts';
import { errands } from './platform/database/scope.ts';
import { malformedBy } from './platform/http/problem.ts';
import { NestLog } from './platform/log/log.ts';
import type { Log } from './platform/log/log.ts';
import { servePages } from './pages.ts';

const BODY_LIMIT_BYTES = 4 * 1024 * 1024;

const HEADERS = {
  'content-security-policy':
    "default-src 'self'; script-src 'self'; style-src 'self' 'unsafe-inline'; img-src 'self' data:; font-src 'self' data:; connect-src 'self'; frame-ancestors 'none'; base-uri 'none'; form-action 'self'; object-src 'none'",
  'x-content-type-options': 'nosniff',
  'referrer-policy': 'same-origin',
  'cross-origin-opener-policy': 'same-origin',
  'permissions-policy': 'camera=(), microphone=(), geolocation=()',
};

/** The whole server, not yet listening. */
export async function makeApplication(config: Config, log: Log): Promise<NestFastifyApplication> {
  const adapter = new FastifyAdapter({
    bodyLimit: BODY_LIMIT_BYTES,
    trustProxy: config.trustProxy,
    requestIdHeader: false,
    genReqId: () => crypto.randomUUID(),
    forceCloseConnections: 'idle',
  });
  const app = await NestFactory.create<NestFastifyApplication>(AppModule.with(config, log), adapter, {
    logger: new NestLog(log),
    abortOnError: false,
  });
  const fastify = adapter.getInstance() as unknown as FastifyInstance;
  await fastify.register(cookie as never);
  fastify.addHook('onRequest', (request, reply, done) => {
    void reply.headers(HEADERS);
    // What was answered to one visitor is kept by no browser and nothing between; a route that knows better says so.
    if (request.url.startsWith('/api/')) void reply.header('cache-control', 'no-store');
    errands.run({ scope: null, manager: null }, done);
  });
  fastify.addHook('onResponse', (request, reply, done) => {
    log.info(
      { request: request.id, method: request.method, route: request.routeOptions.url, status: reply.statusCode, ms: Math.round(reply.elapsedTime) },
      'answered',
    );
    done();
  });
  app.useGlobalPipes(
    new ValidationPipe({
      whitelist: true,
      forbidNonWhitelisted: true,
      forbidUnknownValues: true,
      transform: true,
      stopAtFirstError: true,
      exceptionFactory: malformedBy,
    }),
  );
  document(app);
  await servePages(fastify, config);
  app.enableShutdownHooks(['SIGTERM', 'SIGINT']);
  await app.init();
  return app;
}

function document(app: NestFastifyApplication): void {
  const described = new DocumentBuilder()
    .setTitle('Rafterline')
    .setDescription('Season operations and sponsorship ledger of a high-school athletic department')
    .setVersion('1')
    .build();
  // Drawn up when it is first asked for, so that the start does not wait for it.
  let drawn: object | null = null;
  app.getHttpAdapter().get('/api/openapi.json', (_request: unknown, reply: { send(body: unknown): void }) => {
    drawn ??= SwaggerModule.createDocument(app, described);
    reply.send(drawn);
  });
}
