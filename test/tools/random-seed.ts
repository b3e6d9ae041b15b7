/** Random inputs of every test are the same each time, unless LAW_SEED names others. */
import fc from 'fast-check';

export const RANDOM_SEED = Number(process.env['LAW_SEED'] ?? 56);

fc.configureGlobal({ ...fc.readConfigureGlobal(), seed: RANDOM_SEED });
