/** A zip file of texts (PKWARE APPNOTE 6.3.10), written a piece at a time. */
import { strToU8, Zip, ZipDeflate } from 'fflate';

export interface ZipPart {
  readonly path: string;
  /** Of its text. */
  readonly pieces: Iterable<string>;
}

/** The first day that a zip file knows, by the local clock it counts by: the same parts make the same file. */
const FIRST_DATE = new Date(1980, 0, 1);

/** A file of these parts, in this order. `pause` is awaited between pieces. */
export async function zipped(parts: Iterable<ZipPart>, pause: () => Promise<void>): Promise<Uint8Array> {
  const written: BlobPart[] = [];
  const zip = new Zip((error, chunk) => {
    if (error) throw error;
    written.push(chunk as Uint8Array<ArrayBuffer>);
  });
  for (const { path, pieces } of parts) {
    const file = new ZipDeflate(path, { level: 6 });
    file.mtime = FIRST_DATE;
    zip.add(file);
    for (const text of pieces) {
      file.push(strToU8(text));
      await pause();
    }
    file.push(new Uint8Array(), true);
  }
  zip.end();
  return new Uint8Array(await new Blob(written).arrayBuffer());
}
