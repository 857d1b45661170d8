import { fileURLToPath, pathToFileURL } from 'node:url';
import { build } from 'vite';

const source = fileURLToPath(new URL('../../server/planning/solver/plan-solving.worker.ts', import.meta.url));

/** The worker built from today's sources, so that a stale build never passes. */
export async function builtSolvingWorker(name: string): Promise<URL> {
  const outDir = fileURLToPath(new URL(`../../.build/tests/${name}`, import.meta.url));
  await build({
    configFile: false, logLevel: 'error', ssr: { external: true },
    build: { ssr: true, target: 'node20', outDir, emptyOutDir: true, minify: false, rolldownOptions: { input: { 'plan-solving.worker': source }, output: { entryFileNames: '[name].js' } } },
  });
  return pathToFileURL(`${outDir}/plan-solving.worker.js`);
}
