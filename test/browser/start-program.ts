import { type ChildProcess, spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const START_MS = 240_000;
const STOP_MS = 30_000;

/** A program that runs on a data folder of its own until it is stopped; then the folder goes too. */
export interface Running {
  /** http://127.0.0.1:PORT */
  readonly address: string;
  readonly dataDir: string;
  stop(): Promise<void>;
}

/** What the program's processes find around them: their own data folder and embedded database, whatever the tests were given. */
export function surroundings(dataDir: string): NodeJS.ProcessEnv {
  const { DATABASE_URL: _, ...env } = process.env;
  return { ...env, DATA_DIR: dataDir, NODE_ENV: 'production' };
}

/** Builds (where needed) and starts the program as `npm start` does, on a fresh data folder and any free port. */
export async function startProgram(...words: string[]): Promise<Running> {
  const dataDir = mkdtempSync(join(tmpdir(), 'plateworth-browser-'));
  const env = { ...surroundings(dataDir), PORT: '0' };
  const child = spawn(process.execPath, ['--import', 'tsx', 'lib/commands/start.ts', ...words], { cwd: ROOT, env });
  const stop = async () => {
    await stopped(child);
    rmSync(dataDir, { recursive: true, force: true });
  };
  try {
    return { address: await addressOf(child), dataDir, stop };
  } catch (error) {
    await stop();
    throw error;
  }
}

/** The address that the program says it answers at. */
function addressOf(child: ChildProcess): Promise<string> {
  let said = '';
  return new Promise((resolve, reject) => {
    const late = setTimeout(
      () => reject(new Error(`The program did not start within ${START_MS} ms. It said:\n${said}`)),
      START_MS,
    );
    const listen = (bytes: Buffer) => {
      said += bytes.toString();
      const address = /http:\/\/127\.0\.0\.1:\d+/.exec(said)?.[0];
      if (!address) return;
      clearTimeout(late);
      resolve(address);
    };
    child.stdout?.on('data', listen);
    child.stderr?.on('data', listen);
    child.on('exit', (code) => {
      clearTimeout(late);
      reject(new Error(`The program ended with ${code} before it served. It said:\n${said}`));
    });
  });
}

function stopped(child: ChildProcess): Promise<void> {
  if (child.exitCode !== null || child.signalCode !== null) return Promise.resolve();
  return new Promise((resolve) => {
    const late = setTimeout(() => child.kill('SIGKILL'), STOP_MS);
    child.on('exit', () => {
      clearTimeout(late);
      resolve();
    });
    child.kill('SIGTERM');
  });
}
