import { readdirSync, readFileSync } from 'node:fs';
import { builtinModules } from 'node:module';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';

const root = fileURLToPath(new URL('../..', import.meta.url));
const LAYERED = ['app', 'lib', 'seed'];
const AT_THE_ROOT = ['proxy.ts', 'instrumentation.ts']; // Next insists on finding them there; they are part of app

/** Folder -> what it may import, as the table under Layers in lib/README.md says. */
function allowedImports(): ReadonlyMap<string, ReadonlySet<string>> {
  const text = readFileSync(path.join(root, 'lib/README.md'), 'utf8');
  const rows = (text.split('## Layers')[1] ?? '').matchAll(/^\|\s+(\w+)\s+\|\s+(.+?)\s+\|$/gm);
  const table = new Map<string, ReadonlySet<string>>();
  for (const [, folder = '', names = ''] of rows) {
    if (folder !== 'folder') table.set(folder, new Set(names.split(',').map((name) => name.trim())));
  }
  return table;
}

function sourceFiles(): readonly string[] {
  const inFolders = LAYERED.flatMap((folder) =>
    readdirSync(path.join(root, folder), { recursive: true, encoding: 'utf8' }).map((file) => path.join(folder, file)),
  );
  const here = readdirSync(root).filter((file) => AT_THE_ROOT.includes(file));
  return [...inFolders, ...here].filter(
    (file) => /\.(ts|tsx|mts|mjs)$/.test(file) && !file.startsWith(path.join('lib', 'db', 'client')),
  );
}

/** The layer a file of ours belongs to: lib/model/mix/x.ts is model, app/page.tsx is app. */
function layerOf(file: string): string {
  const [top = '', second = ''] = file.split(path.sep);
  if (AT_THE_ROOT.includes(file)) return 'app';
  return top === 'lib' ? second : top;
}

// `import a from 'x'`, `export { b } from 'x'`, `import 'x'`, `import('x')`: a clause holds only names, braces and commas, so that
// the word "from" inside code or text is none.
const CLAUSE = /^(?:import|export)\s+[\w$*\s{},]+?\s+from\s+['"]([^'"]+)['"]/gm;
const BARE = /^import\s+['"]([^'"]+)['"]/gm;
const DYNAMIC = /\bimport\(\s*['"]([^'"]+)['"]/g;
const OF_TYPES = /^(?:import|export) type\s+[\w$*\s{},]+?\s+from .*$/gm;

function importsOf(file: string): readonly string[] {
  const text = readFileSync(path.join(root, file), 'utf8');
  return [CLAUSE, BARE, DYNAMIC].flatMap((form) => [...text.matchAll(form)].map(([, name = '']) => name));
}

/** The file of ours that an import means (without its ending), or null where it is somebody else's. */
function ownTarget(file: string, name: string): string | null {
  if (name.startsWith('@/')) return path.normalize(name.slice(2));
  if (name.startsWith('.')) return path.normalize(path.join(path.dirname(file), name));
  return null;
}

function packageOf(name: string): string {
  if (name.startsWith('node:') || builtinModules.includes(name)) return 'node';
  return name
    .split('/')
    .slice(0, name.startsWith('@') ? 2 : 1)
    .join('/');
}

const STYLES = /\.(css|svg|ico)$|^@fontsource/;

function faultsOf(file: string, table: ReadonlyMap<string, ReadonlySet<string>>): readonly string[] {
  const layer = layerOf(file);
  const allowed = table.get(layer);
  if (!allowed) return [`${file}: the folder ${layer} is not in the table of layers`];
  return importsOf(file).flatMap((name) => {
    if (STYLES.test(name)) return [];
    const target = ownTarget(file, name);
    if (target === null) return allowed.has(packageOf(name)) ? [] : [`${file} imports ${packageOf(name)}`];
    const targetLayer = layerOf(target);
    if (targetLayer === layer) {
      return layer === 'reports' ? [`${file} imports the report ${target}`] : [];
    }
    return allowed.has(targetLayer) ? [] : [`${file} (${layer}) imports ${target} (${targetLayer})`];
  });
}

/** A loop of files that import each other at run time, or null. Imports of types alone vanish and make no loop. */
function importLoop(files: readonly string[]): readonly string[] | null {
  const known = new Map(files.map((file) => [file.replace(/\.(ts|tsx|mts|mjs)$/, ''), file]));
  const edges = new Map(
    files.map((file) => {
      const text = readFileSync(path.join(root, file), 'utf8').replace(OF_TYPES, '');
      const names = [...text.matchAll(CLAUSE)].map(([, name = '']) => ownTarget(file, name));
      return [
        file,
        names.flatMap((name) => (name === null ? [] : (known.get(name) ?? known.get(`${name}/index`) ?? []))),
      ];
    }),
  );
  const done = new Set<string>();
  const walk = (file: string, trail: readonly string[]): readonly string[] | null => {
    if (trail.includes(file)) return [...trail.slice(trail.indexOf(file)), file];
    if (done.has(file)) return null;
    for (const next of edges.get(file) ?? []) {
      const loop = walk(next, [...trail, file]);
      if (loop) return loop;
    }
    done.add(file);
    return null;
  };
  for (const file of files) {
    const loop = walk(file, []);
    if (loop) return loop;
  }
  return null;
}

describe('the layers of lib/README.md', () => {
  const files = sourceFiles();
  const table = allowedImports();

  test('every folder of lib stands in the table', () => {
    const folders = readdirSync(path.join(root, 'lib'), { withFileTypes: true }).filter((entry) => entry.isDirectory());
    const peopled = folders.map((entry) => entry.name).filter((name) => files.some((file) => layerOf(file) === name));
    expect(peopled.filter((name) => !table.has(name))).toEqual([]);
    expect(table.size).toBeGreaterThan(10);
  });

  test('no file imports what its layer may not', () => {
    expect(files.flatMap((file) => faultsOf(file, table))).toEqual([]);
  });

  test('no files import each other in a circle', () => {
    expect(importLoop(files)).toBeNull();
  });

  test('faultsOf(file) sees a report that imports the database', () => {
    expect(layerOf(path.join('lib', 'reports', 'menu-mix.ts'))).toBe('reports');
    expect(table.get('reports')?.has('db')).toBe(false);
    expect(ownTarget(path.join('lib', 'reports', 'menu-mix.ts'), '../db/database')).toBe(
      path.join('lib', 'db', 'database'),
    );
  });
});
