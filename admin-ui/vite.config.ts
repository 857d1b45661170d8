import { join, resolve } from 'node:path'
import { fileURLToPath } from 'node:url'
import react from '@vitejs/plugin-react'
import { defineConfig } from 'vite'

const checkout = resolve(fileURLToPath(new URL('..', import.meta.url)))
const server = `http://localhost:${process.env['PORT'] ?? 3000}`

export default defineConfig({
  root: join(checkout, 'admin-ui'),
  plugins: [react()],
  build: {
    outDir: join(checkout, '.build/admin-ui'),
    emptyOutDir: true,
    target: 'es2022',
    // The admin pages are one program used all day; one larger file is fetched once.
    chunkSizeWarningLimit: 2500,
  },
  server: {
    port: 5173,
    proxy: { '/api': server, '/health': server, '/refusals': server },
  },
})
