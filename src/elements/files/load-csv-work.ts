import { fetchPart } from '../shared/fetch-part.ts';

export type CsvWork = typeof import('./csv-work.ts');

/** Undefined where it cannot be fetched; the next call tries again. */
export const loadCsvWork = (): Promise<CsvWork | undefined> => fetchPart(() => import('./csv-work.ts'));
