/** A part of an archive cannot be unpacked: it is damaged, locked, or not as large as the archive says. */
export class DamagedArchive extends Error {
  override readonly name = 'DamagedArchive';
}

/** Why an archive is not read at all. */
export type ArchiveFault =
  | { readonly fault: 'damaged'; readonly reason: string }
  | { readonly fault: 'too-large'; readonly bytes: number; readonly limit: number };
