import type { Names } from '../names.ts';

export const PLANT_TYPE_IDS = [
  'turf-cool-season',
  'turf-warm-season',
  'annual-flowers',
  'woody-and-perennial-humid',
  'woody-and-perennial-arid',
  'desert-plants',
  'trees-shrubs-vines-groundcover',
  'herbaceous-perennials',
  'desert-adapted',
  'annual-flowers-and-bedding',
  'home-fruit-deciduous',
  'home-fruit-evergreen',
  'home-vegetables',
] as const;

export type PlantTypeId = (typeof PLANT_TYPE_IDS)[number];

/** One plant type. Its factor is the year's mean share of reference ET that keeps established plants looking well. */
export interface PlantType {
  readonly id: PlantTypeId;
  readonly name: Names;
  readonly plantFactor: number;
  readonly source: string;
  readonly fromMemory: boolean;
}

const S623 = 'ANSI/ASABE S623.1 (2017), Determining Landscape Plant Water Demands; annual average, from memory';

const COMPANION =
  'Kjelgren, Beeson, Pittenger and Montague (2016), Applied Engineering in Agriculture 32(4):363-378; from memory';

/**
 * Plant types of ANSI/ASABE S623 and of the University of California companion table. S623 covers established,
 * permanently installed plantings; food plants stand only in the companion table. A mixed planting takes the factor
 * of its thirstiest plants.
 */
export const PLANT_TYPES: readonly PlantType[] = [
  { id: 'turf-cool-season', name: { en: 'Turf, cool season' }, plantFactor: 0.8, source: S623, fromMemory: true },
  { id: 'turf-warm-season', name: { en: 'Turf, warm season' }, plantFactor: 0.6, source: S623, fromMemory: true },
  { id: 'annual-flowers', name: { en: 'Annual flowers' }, plantFactor: 0.8, source: S623, fromMemory: true },
  {
    id: 'woody-and-perennial-humid',
    name: { en: 'Woody plants and herbaceous perennials, humid climate' },
    plantFactor: 0.7,
    source: S623,
    fromMemory: true,
  },
  {
    id: 'woody-and-perennial-arid',
    name: { en: 'Woody plants and herbaceous perennials, arid climate' },
    plantFactor: 0.5,
    source: S623,
    fromMemory: true,
  },
  { id: 'desert-plants', name: { en: 'Desert plants' }, plantFactor: 0.3, source: S623, fromMemory: true },
  {
    id: 'trees-shrubs-vines-groundcover',
    name: { en: 'Trees, shrubs, vines and groundcovers' },
    plantFactor: 0.5,
    source: COMPANION,
    fromMemory: true,
  },
  {
    id: 'herbaceous-perennials',
    name: { en: 'Herbaceous perennials' },
    plantFactor: 0.5,
    source: COMPANION,
    fromMemory: true,
  },
  {
    id: 'desert-adapted',
    name: { en: 'Desert-adapted plants' },
    plantFactor: 0.3,
    source: COMPANION,
    fromMemory: true,
  },
  {
    id: 'annual-flowers-and-bedding',
    name: { en: 'Annual flowers and bedding plants' },
    plantFactor: 0.8,
    source: COMPANION,
    fromMemory: true,
  },
  {
    id: 'home-fruit-deciduous',
    name: { en: 'Home fruit, deciduous' },
    plantFactor: 0.8,
    source: COMPANION,
    fromMemory: true,
  },
  {
    id: 'home-fruit-evergreen',
    name: { en: 'Home fruit, evergreen' },
    plantFactor: 1,
    source: COMPANION,
    fromMemory: true,
  },
  { id: 'home-vegetables', name: { en: 'Home vegetables' }, plantFactor: 1, source: COMPANION, fromMemory: true },
];
