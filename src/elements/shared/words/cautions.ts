import type { CautionId } from '../../../explain/notices/cautions.ts';

/** The usual cautions of the trade (common practice, no source), each beside what it concerns and on every printed sheet. */
export const cautions = {
  title: 'Before you dig, connect or rely on this',
  backflow:
    'Where the line meets drinking water, fit the backflow protection that your local code asks for, and have it tested as the code says.',
  tank: 'Water from a tank or roof is not for drinking. Mark its taps, and keep its pipes apart from the drinking water.',
  digging: 'Have buried services located before you dig.',
  codes:
    'Local codes, watering restrictions and the advice of a licensed professional come before anything shown here.',
  promise: 'These numbers are a plan, not a promise. Check them at the plant: look at the leaves, feel the soil.',
  /** Beside what needs them; the whole of each stands at the foot. */
  mind: (which: string) => `Mind ${which}: see below.`,
  short: {
    backflow: 'backflow protection',
    tank: 'that tank water is not for drinking',
    digging: 'buried services',
    codes: 'local codes',
    promise: 'the plant itself',
  } satisfies Record<CautionId, string>,
} as const;
