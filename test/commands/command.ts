import { spawn } from 'node:child_process';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../..', import.meta.url));

export interface Ended {
  readonly code: number | null;
  readonly stdout: string;
  readonly stderr: string;
}

/** Runs one of the program's commands as a process of its own on the database at `url`, as its npm script does, to its end. */
export function command(url: string, name: 'load' | 'report' | 'export', ...words: string[]): Promise<Ended> {
  const child = spawn(process.execPath, ['--import', 'tsx', `lib/commands/${name}.ts`, ...words], {
    cwd: root,
    env: { ...process.env, DATABASE_URL: url },
  });
  const said = { stdout: '', stderr: '' };
  child.stdout.on('data', (bytes: Buffer) => {
    said.stdout += bytes.toString();
  });
  child.stderr.on('data', (bytes: Buffer) => {
    said.stderr += bytes.toString();
  });
  return new Promise((resolve) => {
    child.on('close', (code) => resolve({ code, ...said }));
  });
}
