export type IntakeTextureId =
  | 'coarse-sand'
  | 'fine-sand'
  | 'loamy-sand'
  | 'sandy-loam'
  | 'loam'
  | 'silt-loam'
  | 'clay-loam'
  | 'silty-clay'
  | 'clay';

/** Water that one texture takes in without runoff, mm/h, in the order of the slope classes. */
export interface IntakeRates {
  readonly mmPerHour: readonly [number, number, number, number, number];
  readonly source: string;
  readonly fromMemory: boolean;
}

// The table is published in in/h.
const MM_PER_INCH = 25.4;
const inches = (a: number, b: number, c: number, d: number, e: number): IntakeRates['mmPerHour'] => [
  a * MM_PER_INCH,
  b * MM_PER_INCH,
  c * MM_PER_INCH,
  d * MM_PER_INCH,
  e * MM_PER_INCH,
];

const USDA = 'USDA-based intake table by texture and slope, widely reprinted; from memory';

/**
 * Upper ends, in percent, of the printed slope classes 0-4, 5-8, 8-12, 12-16 and over 16. A slope between 4 and 5 is
 * read as the steeper class.
 */
export const INTAKE_SLOPE_CLASSES_PERCENT: readonly number[] = [4, 8, 12, 16, Number.POSITIVE_INFINITY];

/** Intake rate by texture and slope. */
export const INTAKE_RATES: Readonly<Record<IntakeTextureId, IntakeRates>> = {
  'coarse-sand': { mmPerHour: inches(1.25, 1, 0.75, 0.5, 0.31), source: USDA, fromMemory: true },
  'fine-sand': { mmPerHour: inches(0.94, 0.75, 0.56, 0.38, 0.24), source: USDA, fromMemory: true },
  'loamy-sand': { mmPerHour: inches(0.88, 0.7, 0.53, 0.35, 0.22), source: USDA, fromMemory: true },
  'sandy-loam': { mmPerHour: inches(0.75, 0.6, 0.45, 0.3, 0.19), source: USDA, fromMemory: true },
  loam: { mmPerHour: inches(0.54, 0.43, 0.33, 0.22, 0.14), source: USDA, fromMemory: true },
  'silt-loam': { mmPerHour: inches(0.5, 0.4, 0.3, 0.2, 0.13), source: USDA, fromMemory: true },
  'clay-loam': { mmPerHour: inches(0.25, 0.2, 0.15, 0.1, 0.06), source: USDA, fromMemory: true },
  'silty-clay': { mmPerHour: inches(0.19, 0.15, 0.11, 0.08, 0.05), source: USDA, fromMemory: true },
  clay: { mmPerHour: inches(0.13, 0.1, 0.08, 0.05, 0.03), source: USDA, fromMemory: true },
};
