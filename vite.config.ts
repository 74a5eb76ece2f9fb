import react from '@vitejs/plugin-react';
import type { Plugin } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';
import { configDefaults, defineConfig } from 'vitest/config';

/**
 * The one style sheet react-aria writes into the page itself (how a pressed button takes touches), by its SHA-256. When an
 * update changes it, the browser says in the console which one it refused, and the browser tests fail on that.
 */
const REACT_ARIA_STYLE = "'sha256-38RhXrc7EdReTKsOm23ZPOCUgniTUUcjky8QOOrQx6o='";

/**
 * The app sends nothing anywhere, and this makes the browser hold it to that. Built pages only: the development server
 * needs inline scripts. A host that can send headers should send the same policy with `frame-ancestors 'none'`, which a
 * page cannot set for itself (HTML standard, "pragma directives", http-equiv content-security-policy).
 */
const CONTENT_SECURITY_POLICY = [
  "default-src 'none'",
  "script-src 'self'",
  `style-src 'self' ${REACT_ARIA_STYLE}`,
  "img-src 'self' blob: data:",
  "font-src 'self'",
  "connect-src 'self'",
  "worker-src 'self'",
  "manifest-src 'self'",
  "frame-src 'self' blob:",
  "object-src 'none'",
  "base-uri 'none'",
  "form-action 'none'",
].join('; ');

function contentSecurityPolicy(): Plugin {
  return {
    name: 'content-security-policy',
    apply: 'build',
    transformIndexHtml: () => [
      {
        tag: 'meta',
        attrs: { 'http-equiv': 'Content-Security-Policy', content: CONTENT_SECURITY_POLICY },
        injectTo: 'head-prepend',
      },
    ],
  };
}

/**
 * Works without a network after the first visit. A page that is open never changes under the coach: whoever opens or reloads
 * it gets the newest if there is a network, else the last one he had. So the page itself is asked for anew each time, and
 * all else, whose names change with their content, is kept.
 */
const withoutNetwork = VitePWA({
  injectRegister: false,
  filename: 'offline.js',
  manifest: {
    name: 'Gapwright',
    short_name: 'Gapwright',
    description: 'Defensive pressures, two at once, checked gap by gap.',
    display: 'standalone',
    start_url: './',
    theme_color: '#12312b',
    background_color: '#fbfaf7',
    icons: [{ src: 'icon.svg', sizes: 'any', type: 'image/svg+xml' }],
  },
  workbox: {
    inlineWorkboxRuntime: true,
    sourcemap: false,
    globPatterns: ['**/*.{js,css,woff,woff2,svg,icc,json}'],
    navigateFallback: null,
    maximumFileSizeToCacheInBytes: 4_000_000,
    runtimeCaching: [
      {
        urlPattern: ({ request }) => request.mode === 'navigate',
        handler: 'NetworkFirst',
        options: { cacheName: 'page', networkTimeoutSeconds: 4 },
      },
      {
        urlPattern: ({ sameOrigin, url }) => sameOrigin && url.pathname.includes('/assets/'),
        handler: 'CacheFirst',
        options: { cacheName: 'assets', expiration: { maxEntries: 120 } },
      },
    ],
  },
});

export default defineConfig({
  // Relative addresses: the built folder works under any path of any host.
  base: './',
  plugins: [react(), contentSecurityPolicy(), withoutNetwork],
  build: {
    target: 'es2022',
    sourcemap: false,
    // A file inlined as data: would be refused by font-src, and could not be cached on its own.
    assetsInlineLimit: 0,
    // The PDF writer is large, and loaded only when somebody prints.
    chunkSizeWarningLimit: 900,
  },
  worker: { format: 'es' },
  preview: { port: 4173 },
  test: {
    environment: 'node',
    include: ['tests/**/*.test.{ts,tsx}'],
    exclude: [...configDefaults.exclude, 'tests/e2e/**'],
    allowOnly: false,
    // Generous: a slow machine is not a failed test.
    testTimeout: 20_000,
    // Every core: half the tests are long random ones, and one worker less is half the machine where there are two.
    maxWorkers: '100%',
    coverage: {
      provider: 'v8',
      include: ['src/engine/**/*.ts'],
      reportsDirectory: 'coverage',
      reporter: ['text-summary', 'json-summary'],
      // The floor; the aim is 98.
      thresholds: { branches: 90 },
    },
  },
});
