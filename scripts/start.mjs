/** `npm start`: builds the app and serves the result on this machine. */
import { build, preview } from 'vite';
import { freePort } from './free-port.mjs';

const port = await freePort();
await build({ logLevel: 'warn' });
await preview({ preview: { port, strictPort: true, host: 'localhost' } });
console.log(`Gapwright is at http://localhost:${port}  (Ctrl+C stops it)`);
