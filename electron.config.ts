import { svelte } from '@sveltejs/vite-plugin-svelte'
import { defineConfig } from 'electron-vite'
import { fileURLToPath } from 'node:url'

const here = (path: string) => fileURLToPath(new URL(path, import.meta.url))

/**
 * How the desktop program is built: its process (`app/main`), its bridge (`app/preload`) and its window (`app/window`).
 * All libraries are bundled, so that a packaged program holds `out/` and nothing else.
 */
// The tool asks for a default export.
export default defineConfig({
  main: {
    build: {
      externalizeDeps: false,
      outDir: here('out/main'),
      rolldownOptions: {
        input: { index: here('app/main/index.ts') },
        external: ['electron'],
        output: { format: 'es' },
      },
    },
  },
  preload: {
    build: {
      externalizeDeps: false,
      outDir: here('out/preload'),
      rolldownOptions: {
        input: { index: here('app/preload/index.ts') },
        external: ['electron'],
        // A sandboxed bridge is one CommonJS file.
        output: { format: 'cjs', entryFileNames: '[name].cjs' },
      },
    },
  },
  renderer: {
    root: here('app/window'),
    base: './',
    plugins: [svelte({ configFile: false })],
    build: {
      outDir: here('out/window'),
      emptyOutDir: true,
      minify: true,
      // Small assets stay files: the policy of the page allows fonts from the program only, not from data addresses.
      assetsInlineLimit: 0,
      rolldownOptions: { input: { index: here('app/window/index.html') } },
    },
  },
})
