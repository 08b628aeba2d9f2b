export const exportUsage = `npm run export -- FOLDER [options]

Writes everything that the files of a data folder can hold of a venue: one CSV file a kind, and datapackage.json (Data Package,
version 2), which names their columns and types. Loaded into an empty venue it gives the same figures, and exported again the
same files, byte for byte. Sales and covers are written as day sums over all sources. Rows that were refused and wait are written at the
end of their file as they came. What files cannot hold (closed periods, the record of changes, earlier loads) is not in it.
The folder has to be new, empty, or an earlier export, which is replaced.

  --venue NAME     which venue; needed where there are several

Exit code: 0 written, 1 not written, 2 wrong use.
`;

export const exportWords = {
  oneFolder: 'Name one folder to write into.',
  notAFolder: (path: string) => `${path} is a file. Name a folder to write into.`,
  notOurs: (path: string) =>
    `${path} holds files that are no export of this program. Name a new or an empty folder, so that nothing of yours is overwritten.`,
  noWriting: (path: string, reason: string) =>
    `${path} cannot be written (${reason}). Name a folder that you may write to.`,
  written: (venue: string, path: string) => `Wrote ${venue} to ${path}.`,
  waiting: (count: number) =>
    count === 1
      ? '1 refused row waits; it stands at the end of its file.'
      : `${count} refused rows wait; they stand at the end of their files.`,
  rows: (file: string, count: number) => `  ${file}: ${count} ${count === 1 ? 'row' : 'rows'}`,
} as const;
