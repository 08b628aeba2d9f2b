// A process that loads a path into a venue and kills itself at a named point of it.
import { loadFolder } from '../../lib/changes/load-folder';
import { openDatabase } from '../../lib/db/database';

const [path = '', venue = '', at = ''] = process.argv.slice(2);
await loadFolder(await openDatabase(), path, {
  venue,
  async reached(point) {
    if (point !== at) return;
    process.kill(process.pid, 'SIGKILL');
    await new Promise(() => {}); // nothing more is done while the signal comes
  },
});
console.log('loaded');
process.exit(0);
