import { execFile } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import type { BrowserContextOptions, Page } from 'playwright-core';
import { afterAll, beforeAll, expect } from 'vitest';
import { type Running, startProgram, surroundings } from './start-program';
import { visitor } from './visit';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));

/** The program with the demo restaurant, eighteen months of it, as the tests of a file ask it. */
export interface DemoProgram {
  visit(path: string, options?: BrowserContextOptions): Promise<Page>;
  /** What `report WHAT ... --json` says of the same data. */
  reported(...words: string[]): Promise<unknown>;
  /** What is answered at an address below /api/v1/venues/Marram House/months. */
  fetched(path: string): Promise<unknown>;
}

/** Starts a program of its own for the tests of a file, and stops it after them. */
export function demoProgram(): DemoProgram {
  const visit = visitor();
  let program: Running;
  beforeAll(async () => {
    program = await startProgram('--book', 'seed/demo-house');
    await fetch(program.address); // costs the months once, so that no page waits for that
  });
  afterAll(() => program.stop());
  return {
    visit: (path, options) => visit(`${program.address}${path}`, options),
    async reported(...words) {
      const asked = ['--import', 'tsx', 'lib/commands/report.ts', ...words, '--json'];
      const options = { cwd: ROOT, env: surroundings(program.dataDir), maxBuffer: 64_000_000 };
      return JSON.parse((await promisify(execFile)(process.execPath, asked, options)).stdout);
    },
    async fetched(path) {
      const response = await fetch(`${program.address}/api/v1/venues/Marram%20House/months/${path}`);
      expect(response.status).toBe(200);
      return response.json();
    },
  };
}
