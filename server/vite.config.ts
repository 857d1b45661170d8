import { copyFileSync, existsSync, mkdirSync, readdirSync } from 'node:fs'
import { dirname, join, resolve } from 'node:path'
import { fileURLToPath } from 'node:url'
import type { Plugin } from 'vite'
import { defineConfig } from 'vite'

const checkout = resolve(fileURLToPath(new URL('..', import.meta.url)))

function filesBelow(folder: string): string[] {
  if (!existsSync(join(checkout, folder))) return []
  return readdirSync(join(checkout, folder), { withFileTypes: true, recursive: true })
    .filter((found) => found.isFile())
    .map((found) => join(found.parentPath, found.name).slice(checkout.length + 1))
    .sort()
}

const serverFiles = filesBelow('server')

/** Every program that is started by itself: the server, each worker, the demo season. */
function entries(): Record<string, string> {
  const found = serverFiles.filter((file) => file === 'server/main.ts' || file === 'server/reports/books.ts' || file.endsWith('.worker.ts'))
  const seeds = filesBelow('seeds').filter((file) => file === 'seeds/main.ts')
  return Object.fromEntries([...found, ...seeds].map((file) => [file.replace(/^server\//, '').replace(/\.ts$/, ''), join(checkout, file)]))
}

/** A worker is named by its source; in the build the same file ends in .js. */
function workersByTheirBuiltName(): Plugin {
  return {
    name: 'workers-by-their-built-name',
    enforce: 'pre',
    transform(code) {
      if (!code.includes('.worker.ts')) return null
      return { code: code.replaceAll(/new URL\((['"])([^'"]+\.worker)\.ts\1/g, 'new URL($1$2.js$1'), map: null }
    },
  }
}

/** Templates, word lists and fonts are read at run time from beside the file that names them. */
function copyWhatIsNoCode(): Plugin {
  const stays = /\.(tsx?|mjs|md|sh|conf)$|(^|\/)Dockerfile$|^server\/commands\//
  return {
    name: 'copy-what-is-no-code',
    writeBundle(options) {
      for (const file of serverFiles) {
        if (stays.test(file)) continue
        const target = join(options.dir ?? '', file.slice('server/'.length))
        mkdirSync(dirname(target), { recursive: true })
        copyFileSync(join(checkout, file), target)
      }
    },
  }
}

export default defineConfig({
  root: checkout,
  plugins: [workersByTheirBuiltName(), copyWhatIsNoCode()],
  // A package that is imported stays in node_modules; only our own files are built.
  ssr: { external: true },
  build: {
    ssr: true,
    target: 'node20',
    outDir: join(checkout, '.build/server'),
    emptyOutDir: true,
    minify: false,
    sourcemap: true,
    rolldownOptions: {
      input: entries(),
      output: {
        format: 'es',
        preserveModules: true,
        preserveModulesRoot: join(checkout, 'server'),
        entryFileNames: '[name].js',
        keepNames: true,
      },
    },
  },
})
