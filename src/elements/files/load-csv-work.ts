export type CsvWork = typeof import('./csv-work.ts');

/** Undefined where it cannot be fetched; the next call tries again. */
export async function loadCsvWork(): Promise<CsvWork | undefined> {
  try {
    return await import('./csv-work.ts');
  } catch (error) {
    // A fault of the page's own, not of the network, must not hide.
    if (!(error instanceof TypeError)) throw error;
    return undefined;
  }
}
