import { type ChildProcess, spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { TestProject } from 'vitest/node';
import { findBrowser } from './find-browser';

/** The running program, as the tests see it. */
export interface Program {
  /** http://127.0.0.1:PORT */
  readonly address: string;
  readonly dataDir: string;
  readonly browser: string;
}

declare module 'vitest' {
  interface ProvidedContext {
    program: Program;
  }
}

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const START_MS = 240_000;
const STOP_MS = 30_000;

/** Builds and starts the program as `npm start` does, on a data folder and a port of its own, with the book it starts with. */
export default async function setup(project: TestProject): Promise<() => Promise<void>> {
  const browser = await findBrowser();
  const dataDir = mkdtempSync(join(tmpdir(), 'plateworth-browser-'));
  const { DATABASE_URL: _, ...env } = process.env;
  const child = spawn(process.execPath, ['--import', 'tsx', 'lib/commands/start.ts'], {
    cwd: ROOT,
    env: { ...env, DATA_DIR: dataDir, PORT: '0', NODE_ENV: 'production' },
  });
  try {
    const address = await addressOf(child);
    project.provide('program', { address, dataDir, browser });
  } catch (error) {
    await stopped(child);
    rmSync(dataDir, { recursive: true, force: true });
    throw error;
  }
  return async () => {
    await stopped(child);
    rmSync(dataDir, { recursive: true, force: true });
  };
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
