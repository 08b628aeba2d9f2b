export const startUsage = `npm start -- [options]

Brings up the database (the embedded one in DATA_DIR, or the one that DATABASE_URL names), brings it up to date,
builds the pages where they are older than their sources, and serves them on this machine alone.

  --empty          loads nothing into an empty database; else the demo restaurant, Marram House
  --book FOLDER    loads this data folder into an empty database instead of the demo

PORT               where it listens on 127.0.0.1 (3000)
DATA_DIR           where the embedded database lives (.data)
DATABASE_URL       a PostgreSQL 15 or newer to use instead

Exit code: 0 stopped in good order, 1 it could not start, 2 wrong use.
`;

export const alreadyServed = (folder: string): string =>
  `Plateworth already runs on ${folder}. Use that one, or set DATA_DIR to another folder.`;

export const portTaken = (port: number): string =>
  `Another program listens on 127.0.0.1:${port}. Stop it, or choose another port: PORT=${port + 1} npm start.`;

export const noSuchPort = (port: string): string => `PORT is “${port}”; it has to be a whole number from 0 to 65535.`;

export const noPages = (output: string): string => `The pages could not be built:\n${output}`;

export const building = 'Building the pages, once for each version …';
export const emptyOrBook = 'Either --empty or --book, not both.';
export const loadingDemo =
  'Loading Marram House, the demo: eighteen months of an invented dessert restaurant. It takes some seconds …';
export const finishingDemo =
  'Marram House, the demo, was not loaded to its end the last time. Loading what is missing …';
export const loadingBook = (folder: string): string => `Loading ${folder} …`;
export const openAtAddress = (address: string): string => `Plateworth is open at ${address}  (Ctrl-C stops it)`;
export const stopping = 'Stopping …';
