import { fileURLToPath, pathToFileURL } from 'node:url';
import { build } from 'vite';
import { Typesetter } from '../../server/platform/typesetting/typesetter.ts';

const source = fileURLToPath(new URL('../../server/platform/typesetting/typeset.worker.ts', import.meta.url));

/** A typesetter on a worker built from today's sources, so that a stale build never passes. */
export async function aTypesetter(name: string, limitMilliseconds?: number): Promise<Typesetter> {
  const outDir = fileURLToPath(new URL(`../../.build/tests/${name}`, import.meta.url));
  await build({
    configFile: false, logLevel: 'error', ssr: { external: true },
    build: { ssr: true, target: 'node20', outDir, emptyOutDir: true, minify: false, rolldownOptions: { input: { 'typeset.worker': source }, output: { entryFileNames: '[name].js' } } },
  });
  const workerFile = pathToFileURL(`${outDir}/typeset.worker.js`);
  return new Typesetter(limitMilliseconds === undefined ? { workerFile } : { workerFile, limitMilliseconds });
}
