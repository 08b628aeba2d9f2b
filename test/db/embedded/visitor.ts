// A process that uses the embedded server of a folder: says its port and whether it may serve, leaves when its input ends.
import { openEmbedded } from '../../../lib/db/embedded/open-embedded';

const presence = await openEmbedded(process.argv[2] ?? '');
console.log(presence.connection.port);
console.log(await presence.claim());
process.stdin.on('end', async () => {
  await presence.leave();
  console.log('left');
});
process.stdin.resume();
