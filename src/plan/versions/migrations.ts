/**
 * Steps from each older version of the format to the next, one file each. Version 1 is the first: there is none yet. The next one is
 * `from-1.ts` with `export const from1: Migration = { from: 1, migrate: … }`, listed here.
 */
import type { Migration } from './migrated.ts';

export const MIGRATIONS: readonly Migration[] = [];
