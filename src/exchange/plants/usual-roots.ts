/** How deep plants of a kind usually root: the table that landscape plants have, read by the kind of a plant. */
import { LANDSCAPE_ROOTS } from '../../engine/plants/landscape-roots.data.ts';
import type { PlantKind } from './plant-list.ts';

type RootsId = 'annual-flowers' | 'perennials-and-groundcover' | 'shrubs' | 'trees';

/** The reading of this kit. Plants in pots root as deep as their pot. */
const ROOTS_OF_KIND: Readonly<Record<PlantKind, RootsId | undefined>> = {
  tree: 'trees',
  shrub: 'shrubs',
  vine: 'shrubs',
  perennial: 'perennials-and-groundcover',
  'ground-cover': 'perennials-and-groundcover',
  fern: 'perennials-and-groundcover',
  grass: 'perennials-and-groundcover',
  herb: 'perennials-and-groundcover',
  bulb: 'perennials-and-groundcover',
  succulent: 'perennials-and-groundcover',
  annual: 'annual-flowers',
  indoor: undefined,
};

/** Every kind of plant. */
export const PLANT_KINDS = Object.keys(ROOTS_OF_KIND) as readonly PlantKind[];

/** In m; undefined where the pot decides. */
export function usualRootDepthM(kind: PlantKind): number | undefined {
  const id = ROOTS_OF_KIND[kind];
  return LANDSCAPE_ROOTS.find((roots) => roots.id === id)?.rootDepthUsedM;
}

/** Whether a depth, m, is one that plants of some kind usually have, and not one that somebody measured. */
export function isUsualRootDepth(depthM: number): boolean {
  return LANDSCAPE_ROOTS.some(({ rootDepthUsedM }) => Math.abs(rootDepthUsedM - depthM) < NEAR_M);
}

/** Whole inches and centimeters of one depth lie nearer than this. */
const NEAR_M = 0.006;
