/** Most that a weather file may have, bytes: a century of days is a tenth of it. */
const MOST_BYTES = 50_000_000;

/** The text of a weather file, whichever way it was written; undefined where it cannot be read or is none. */
export async function readWeatherText(file: File): Promise<string | undefined> {
  if (file.size > MOST_BYTES) return undefined;
  try {
    const bytes = new Uint8Array(await file.arrayBuffer());
    const text = decoded(bytes);
    return text.includes('\0') || text.trim() === '' ? undefined : text;
  } catch {
    // It was moved or closed off since it was chosen.
    return undefined;
  }
}

/** UTF-8; what is not was written on an older Windows. */
function decoded(bytes: Uint8Array): string {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder('windows-1252').decode(bytes);
  }
}
