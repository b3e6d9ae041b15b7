import type { Names } from '../names.ts';

/** How deep landscape plants of one type draw water, and how much of it may be used before the next watering. */
export interface LandscapeRoots {
  readonly id: string;
  readonly name: Names;
  readonly rootDepthM: { readonly min: number; readonly max: number };
  /** What is used until somebody chooses: the middle of the range. */
  readonly rootDepthUsedM: number;
  readonly allowedDepletion: { readonly min: number; readonly max: number };
  readonly allowedDepletionUsed: number;
  readonly source: string;
  readonly fromMemory: boolean;
}

// Depths are handed down in inches.
const METRES_PER_INCH = 25.4 / 1000;

const PRACTICE = 'common practice, no source; from memory';

/**
 * Effective root depth and allowed depletion of landscape plants. Half of the available water is usual for established
 * shrubs, 30 to 40 % for shallow or sensitive plants; which types count as shallow is the reading of this kit.
 */
export const LANDSCAPE_ROOTS: readonly LandscapeRoots[] = [
  {
    id: 'annual-flowers',
    name: { en: 'Annual flowers' },
    rootDepthM: { min: 6 * METRES_PER_INCH, max: 12 * METRES_PER_INCH },
    rootDepthUsedM: 9 * METRES_PER_INCH,
    allowedDepletion: { min: 0.3, max: 0.4 },
    allowedDepletionUsed: 0.35,
    source: PRACTICE,
    fromMemory: true,
  },
  {
    id: 'perennials-and-groundcover',
    name: { en: 'Perennials and groundcover' },
    rootDepthM: { min: 8 * METRES_PER_INCH, max: 12 * METRES_PER_INCH },
    rootDepthUsedM: 10 * METRES_PER_INCH,
    allowedDepletion: { min: 0.3, max: 0.4 },
    allowedDepletionUsed: 0.35,
    source: PRACTICE,
    fromMemory: true,
  },
  {
    id: 'shrubs',
    name: { en: 'Shrubs' },
    rootDepthM: { min: 12 * METRES_PER_INCH, max: 24 * METRES_PER_INCH },
    rootDepthUsedM: 18 * METRES_PER_INCH,
    allowedDepletion: { min: 0.5, max: 0.5 },
    allowedDepletionUsed: 0.5,
    source: PRACTICE,
    fromMemory: true,
  },
  {
    id: 'trees',
    name: { en: 'Trees' },
    rootDepthM: { min: 18 * METRES_PER_INCH, max: 36 * METRES_PER_INCH },
    rootDepthUsedM: 27 * METRES_PER_INCH,
    allowedDepletion: { min: 0.5, max: 0.5 },
    allowedDepletionUsed: 0.5,
    source: PRACTICE,
    fromMemory: true,
  },
];
