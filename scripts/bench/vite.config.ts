import { defineConfig } from 'vite';

/** The bench is built as the app is: what runs a single time, from sources, is slowed by the tool that reads them. */
export default defineConfig({
  build: { ssr: 'scripts/bench/main.ts', outDir: '.cache/bench', emptyOutDir: true, target: 'es2022' },
  publicDir: false,
});
