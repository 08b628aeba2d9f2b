import { spawnSync } from 'node:child_process';
import { readdirSync, statSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';

/** What a build of the pages is made from. */
const SOURCES = ['app', 'lib', 'proxy.ts', 'next.config.js', 'package-lock.json', 'tsconfig.json'];

/** Whether the built pages are missing or older than one of their sources. */
export function pagesAreStale(): boolean {
  const built = statSync(join('.next', 'BUILD_ID'), { throwIfNoEntry: false });
  return built === undefined || SOURCES.some((source) => newest(source) > built.mtimeMs);
}

/** Builds the pages; null, or what the build said where it failed. */
export function buildPages(): string | null {
  const next = createRequire(import.meta.url).resolve('next/dist/bin/next');
  const build = spawnSync(process.execPath, [next, 'build'], {
    encoding: 'utf8',
    maxBuffer: 64_000_000,
    env: { ...process.env, NODE_ENV: 'production', NEXT_TELEMETRY_DISABLED: '1', NODE_OPTIONS: '' },
  });
  return build.status === 0 ? null : `${build.stdout}${build.stderr}`;
}

function newest(path: string): number {
  const stat = statSync(path, { throwIfNoEntry: false });
  if (!stat) return 0;
  if (!stat.isDirectory()) return stat.mtimeMs;
  return readdirSync(path).reduce((latest, name) => Math.max(latest, newest(join(path, name))), stat.mtimeMs);
}
