/** Steps from each older version of the format to the next, one file each. */
import { from1 } from './from-1.ts';
import type { Migration } from './migrated.ts';

export const MIGRATIONS: readonly Migration[] = [from1];
