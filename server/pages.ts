import { existsSync } from 'node:fs';
import { join, resolve } from 'node:path';
import type { FastifyInstance } from 'fastify';
import serveStatic from '@fastify/static';
import type { Config } from './platform/config/config.ts';
import { problemOf } from './platform/http/problem.ts';

/** The page of the table is built beside the office's pages. */
const NIGHT_BESIDE_OFFICE = '../night';

/** Built pages as they are, and the office's one page for every address of its own. */
export async function servePages(fastify: FastifyInstance, config: Config): Promise<void> {
  const office = config.staticFolder ? resolve(config.staticFolder) : null;
  const hasOffice = office !== null && existsSync(join(office, 'index.html'));
  if (hasOffice) await serveFolder(fastify, office, '/', true);
  const night = office === null ? null : resolve(office, NIGHT_BESIDE_OFFICE);
  if (night !== null && existsSync(join(night, 'index.html'))) {
    await serveFolder(fastify, night, '/night/', !hasOffice);
    fastify.get('/night', (_request, reply) => reply.redirect('/night/'));
  }
  fastify.get('/*', (request, reply) => {
    const isPage = hasOffice && !/^\/(api|health|refusals|assets|night)(\/|$)/.test(request.url);
    if (isPage) return (reply as unknown as { sendFile(name: string): unknown }).sendFile('index.html');
    return reply
      .status(404)
      .header('content-type', 'application/problem+json; charset=utf-8')
      .send(JSON.stringify(problemOf({ statusCode: 404 })));
  });
}

/** Files named after their content may be kept for good; everything else, the service worker above all, is asked for anew. */
async function serveFolder(fastify: FastifyInstance, root: string, prefix: string, decorateReply: boolean): Promise<void> {
  await fastify.register(serveStatic as never, {
    root,
    prefix,
    decorateReply,
    wildcard: false,
    preCompressed: true,
    globIgnore: ['**/*.br', '**/*.gz'],
    setHeaders: (reply: { header(name: string, value: string): void }, path: string) => {
      reply.header('cache-control', /\/assets\//.test(path) ? 'public, max-age=31536000, immutable' : 'no-cache');
    },
  } as never);
}
