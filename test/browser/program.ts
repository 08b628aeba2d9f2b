import type { TestProject } from 'vitest/node';
import { findBrowser } from './find-browser';
import { startProgram } from './start-program';

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

/** Finds a browser, builds and starts the program with the small book, whose figures the tests state, and stops it after all browser tests. */
export default async function setup(project: TestProject): Promise<() => Promise<void>> {
  const browser = await findBrowser();
  const { address, dataDir, stop } = await startProgram('--book', 'seed/small');
  project.provide('program', { address, dataDir, browser });
  return stop;
}
