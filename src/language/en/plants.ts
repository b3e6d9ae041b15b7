/** What is said where a plant is found by its name. */
import type { WaterUseClassId } from '../../engine/plants/water-use-classes.data.ts';
import { area } from '../area.ts';
import type { Format } from '../format/format.ts';

const CLASSES: Readonly<Record<WaterUseClassId, string>> = {
  'very-low': 'very low',
  low: 'low',
  moderate: 'moderate',
  high: 'high',
};

export const plants = {
  search: {
    label: 'Plant or crop',
    help: 'Type its name. It brings its water use; you may change that, and you need not pick any.',
  },
  options: 'Plants',
  none: 'No plant of this name is in the list. Choose its water use yourself.',
  notFetched: 'The list of plants did not come. Check your connection, then type again.',
  /** `as`: the name of it that was typed, where another one is shown. */
  option: (name: string, as: string | undefined) => (as === undefined ? name : `${name} (${as})`),
  crop: 'crop, FAO-56',
  classes: CLASSES,
  needs: (water: string) => `${water} water use`,
  kinds: {
    tree: 'tree',
    shrub: 'shrub',
    perennial: 'perennial',
    'ground-cover': 'ground cover',
    fern: 'fern',
    grass: 'grass',
    herb: 'herb',
    vine: 'vine',
    bulb: 'bulb',
    annual: 'annual',
    succulent: 'succulent',
    indoor: 'pot plant',
  },
  regions: {
    'north-central-coast': 'North-Central Coast',
    'central-valley': 'Central Valley',
    'south-coast': 'South Coast',
    'south-inland': 'South Inland',
    'high-desert': 'High Desert',
    'low-desert': 'Low Desert',
  },
  /** `where`: regions of California. */
  inRegions: ({ list }: Format, water: string, where: readonly string[]) => `${water}: ${list(where)}`,
  inAllRegions: (water: string) => `Water use is ${water} in all regions of California that it suits.`,
  byRegion: (classes: readonly string[]) => `Water use by region: ${classes.join('; ')}.`,
  fromList: 'From the WUCOLS IV list for California. Elsewhere take the region whose summers are most like yours.',
  /** How deep its roots are taken, m; `kind` in words. */
  roots: ({ quantity }: Format, depthM: number, kind: string) =>
    `Roots: ${quantity(depthM, 'rootDepth')}, as is usual (${kind}).`,
  cropRoots: ({ quantity }: Format, depthM: number) => `Roots: ${quantity(depthM, 'rootDepth')} (FAO-56).`,
  grows: ({ quantity }: Format, leastM: number, mostM: number) =>
    `It grows ${quantity(leastM, 'length')} to ${quantity(mostM, 'length')} across.`,
  fromMemory: 'Its class is not checked against a published list.',
  brought: (name: string, water: string) => `${name}: ${water} water use`,
  /** Somebody chose another class than the plant brought. */
  setByHand: (name: string, water: string) => `${name} has ${water} water use in the list; yours is set by hand.`,
};

export const plantsWords = area('plants', plants);
