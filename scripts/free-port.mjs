import { createServer } from 'node:net';

/** The address people are told; the next free one is taken when it is in use. */
export const USUAL_PORT = 4173;

/**
 * The first port from `from` upwards that nothing listens on, on any address `localhost` may mean.
 * @param {number} [from]
 * @returns {Promise<number>}
 * @throws {Error} when fifty in a row are taken
 */
export async function freePort(from = USUAL_PORT) {
  for (let port = from; port < from + 50; port += 1) {
    if ((await isFree(port, '127.0.0.1')) && (await isFree(port, '::1'))) return port;
  }
  throw new Error(`No free port between ${from} and ${from + 49}.`);
}

/**
 * @param {number} port
 * @param {string} host
 * @returns {Promise<boolean>} true also where the machine has no such address (no IPv6, say)
 */
function isFree(port, host) {
  return new Promise((settle) => {
    const server = createServer();
    server.once('error', (/** @type {NodeJS.ErrnoException} */ error) => settle(error.code !== 'EADDRINUSE'));
    server.listen({ port, host }, () => server.close(() => settle(true)));
  });
}
