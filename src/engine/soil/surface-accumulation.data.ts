export type AccumulationTextureId = 'clay' | 'silty-clay' | 'clay-loam' | 'loam' | 'sandy-loam' | 'loamy-sand' | 'sand';

/** Basic intake of one texture and the water that may stand on it, by slope class, before it runs off. */
export interface SurfaceAccumulation {
  readonly basicIntakeMmPerHour: number;
  readonly accumulationMm: readonly [number, number, number, number];
  readonly source: string;
  readonly fromMemory: boolean;
}

// The table is published in inches and inches an hour.
const MM_PER_INCH = 25.4;
const inches = (a: number, b: number, c: number, d: number): SurfaceAccumulation['accumulationMm'] => [
  a * MM_PER_INCH,
  b * MM_PER_INCH,
  c * MM_PER_INCH,
  d * MM_PER_INCH,
];

const PROTOCOL = 'Irrigation Association, scheduling test protocol, 8th draft (2008); from memory';

/**
 * Upper ends, in percent, of the printed slope classes 0-3, 4-6, 7-12 and 13 and over. A slope between two classes is
 * read as the steeper.
 */
export const ACCUMULATION_SLOPE_CLASSES_PERCENT: readonly number[] = [3, 6, 12, Number.POSITIVE_INFINITY];

/** Basic intake and allowable surface accumulation by texture. */
export const SURFACE_ACCUMULATIONS: Readonly<Record<AccumulationTextureId, SurfaceAccumulation>> = {
  clay: {
    basicIntakeMmPerHour: 0.1 * MM_PER_INCH,
    accumulationMm: inches(0.2, 0.15, 0.1, 0.1),
    source: PROTOCOL,
    fromMemory: true,
  },
  'silty-clay': {
    basicIntakeMmPerHour: 0.15 * MM_PER_INCH,
    accumulationMm: inches(0.23, 0.19, 0.16, 0.13),
    source: PROTOCOL,
    fromMemory: true,
  },
  'clay-loam': {
    basicIntakeMmPerHour: 0.2 * MM_PER_INCH,
    accumulationMm: inches(0.26, 0.22, 0.18, 0.15),
    source: PROTOCOL,
    fromMemory: true,
  },
  loam: {
    basicIntakeMmPerHour: 0.35 * MM_PER_INCH,
    accumulationMm: inches(0.3, 0.25, 0.21, 0.17),
    source: PROTOCOL,
    fromMemory: true,
  },
  'sandy-loam': {
    basicIntakeMmPerHour: 0.4 * MM_PER_INCH,
    accumulationMm: inches(0.33, 0.29, 0.24, 0.2),
    source: PROTOCOL,
    fromMemory: true,
  },
  'loamy-sand': {
    basicIntakeMmPerHour: 0.5 * MM_PER_INCH,
    accumulationMm: inches(0.36, 0.3, 0.26, 0.22),
    source: PROTOCOL,
    fromMemory: true,
  },
  sand: {
    basicIntakeMmPerHour: 0.6 * MM_PER_INCH,
    accumulationMm: inches(0.4, 0.35, 0.3, 0.25),
    source: PROTOCOL,
    fromMemory: true,
  },
};
