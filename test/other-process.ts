import { type ChildProcess, spawn } from 'node:child_process';
import { createInterface } from 'node:readline';
import { pathToFileURL } from 'node:url';

/** A program that a test runs beside itself: what it says line by line, and its end. */
export interface OtherProcess {
  readonly child: ChildProcess;
  /** The next line that it prints; fails with its error output where it ends instead. */
  line(): Promise<string>;
  /** Its exit code or the signal that ended it. */
  readonly end: Promise<number | NodeJS.Signals | null>;
}

/** Runs a TypeScript file in a process of its own. */
export function otherProcess(
  file: string,
  args: readonly string[],
  options: {
    readonly cwd?: string;
    readonly uid?: number;
    readonly gid?: number;
    readonly env?: Readonly<Record<string, string>>;
  } = {},
): OtherProcess {
  const tsx = pathToFileURL(`${process.cwd()}/node_modules/tsx/dist/loader.mjs`).href;
  const child = spawn(process.execPath, ['--import', tsx, file, ...args], {
    stdio: ['pipe', 'pipe', 'pipe'],
    ...options,
    env: { ...process.env, ...options.env },
  });
  let trouble = '';
  child.stderr.on('data', (text: Buffer) => {
    trouble += text;
  });
  const lines = createInterface({ input: child.stdout })[Symbol.asyncIterator]();
  return {
    child,
    async line() {
      const next = await lines.next();
      if (next.done) throw new Error(`${file} ended: ${trouble}`);
      return next.value;
    },
    end: new Promise((resolve) => {
      child.on('close', (code, signal) => resolve(code ?? signal));
    }),
  };
}
