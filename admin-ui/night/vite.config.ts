import { join, resolve } from 'node:path'
import { fileURLToPath } from 'node:url'
import react from '@vitejs/plugin-react'
import type { Plugin } from 'vite'
import { defineConfig } from 'vite'
import { VitePWA } from 'vite-plugin-pwa'

const checkout = resolve(fileURLToPath(new URL('../..', import.meta.url)))
const server = `http://localhost:${process.env['PORT'] ?? 3000}`

/** The sheet of styles stands at the end, so that what the page says before it runs is painted without waiting for it. */
function stylesLast(): Plugin {
  return {
    name: 'styles-last',
    enforce: 'post',
    transformIndexHtml: {
      order: 'post',
      handler(html) {
        const links = html.match(/\s*<link rel="stylesheet"[^>]*>/g) ?? []
        return links.reduce((page, link) => page.replace(link, ''), html).replace('</body>', () => `${links.join('').trim()}\n  </body>`)
      },
    },
  }
}

export default defineConfig({
  root: join(checkout, 'admin-ui/night'),
  base: '/night/',
  // React's own renderer is 57 kB of the table's script, and a phone in a gym waits for all of it; the office pages stay with it.
  resolve: {
    alias: {
      'react-dom/client': 'preact/compat/client',
      'react-dom': 'preact/compat',
      'react/jsx-runtime': 'preact/jsx-runtime',
      react: 'preact/compat',
    },
  },
  plugins: [
    react(),
    stylesLast(),
    VitePWA({
      // Nothing may load itself anew in mid-game: a new page is offered.
      registerType: 'prompt',
      injectRegister: null,
      scope: '/night/',
      // Written by hand: a tenth of what a made one weighs.
      strategies: 'injectManifest',
      srcDir: '.',
      filename: 'service-worker.ts',
      injectManifest: { globPatterns: ['**/*.{js,css,html,svg,webmanifest}'], rollupFormat: 'iife', sourcemap: false },
      manifest: {
        id: '/night/',
        name: 'Rafterline table',
        short_name: 'Table',
        description: 'The page at the scorer’s table: what to read, and the log of what was read',
        start_url: '/night/',
        scope: '/night/',
        display: 'standalone',
        background_color: '#0e1626',
        theme_color: '#14213a',
        icons: [
          { src: 'table.svg', sizes: 'any', type: 'image/svg+xml', purpose: 'any' },
          { src: 'table-round.svg', sizes: 'any', type: 'image/svg+xml', purpose: 'maskable' },
        ],
      },
    }),
  ],
  build: {
    outDir: join(checkout, '.build/night'),
    emptyOutDir: true,
    target: 'es2022',
    modulePreload: false,
    cssCodeSplit: false,
  },
  server: {
    port: 5174,
    proxy: { '/api': server, '/health': server, '/refusals': server },
  },
})
