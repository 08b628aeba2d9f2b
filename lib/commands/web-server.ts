import { createServer, type Server } from 'node:http';
import next from 'next';
import { refusesPath } from './undecodable-path';

/** How long requests under way may take to finish when the program stops. */
const PATIENCE_MS = 10_000;

/** The pages and the HTTP interface, served. */
export interface WebServer {
  readonly address: string;
  /** Takes no more requests, lets those under way finish, and ends. */
  stop(): Promise<void>;
}

/** Whether nothing listens on this port of 127.0.0.1. */
export function isFree(port: number): Promise<boolean> {
  const probe = createServer();
  return new Promise((resolve, reject) => {
    probe.on('error', (error: NodeJS.ErrnoException) => (error.code === 'EADDRINUSE' ? resolve(false) : reject(error)));
    probe.listen(port, '127.0.0.1', () => probe.close(() => resolve(true)));
  });
}

/** Serves the built pages on 127.0.0.1; port 0 takes any free one. */
export async function serve(port: number): Promise<WebServer> {
  const app = next({ dev: false, dir: process.cwd(), hostname: '127.0.0.1', port });
  await app.prepare();
  const answer = app.getRequestHandler();
  const server = createServer((request, response) => {
    if (!refusesPath(request, response)) void answer(request, response);
  });
  await new Promise<void>((resolve, reject) => server.on('error', reject).listen(port, '127.0.0.1', resolve));
  const address = server.address();
  const taken = address !== null && typeof address === 'object' ? address.port : port;
  return {
    address: `http://127.0.0.1:${taken}`,
    async stop() {
      await closed(server);
      await app.close();
    },
  };
}

function closed(server: Server): Promise<void> {
  return new Promise((resolve) => {
    const late = setTimeout(() => server.closeAllConnections(), PATIENCE_MS);
    server.close(() => {
      clearTimeout(late);
      resolve();
    });
    server.closeIdleConnections();
  });
}
