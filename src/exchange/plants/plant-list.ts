/** The list of garden plants and crops, as it is searched: names, water-use class by region, spread, kind. */
import { CROP_IDS, type CropId } from '../../engine/plants/crops.data.ts';
import { findCrop } from '../../engine/plants/find-crop.ts';
import { WATER_USE_CLASS_IDS, type WaterUseClassId } from '../../engine/plants/water-use-classes.data.ts';
import { comparable } from './comparable.ts';
import { type ClassByRegion, PLANT_REGIONS } from './plant-regions.ts';
import { CROP_NAMES, PLANT_ROWS } from './plants.data.ts';

const KINDS = {
  T: 'tree',
  S: 'shrub',
  P: 'perennial',
  C: 'ground-cover',
  F: 'fern',
  G: 'grass',
  H: 'herb',
  V: 'vine',
  B: 'bulb',
  A: 'annual',
  U: 'succulent',
  I: 'indoor',
} as const;

export type PlantKind = (typeof KINDS)[keyof typeof KINDS];

const CLASSES: Readonly<Record<string, WaterUseClassId>> = { V: 'very-low', L: 'low', M: 'moderate', H: 'high' };

interface Named {
  /** The first is the one that is shown. */
  readonly names: readonly string[];
  /** Every name, the botanical one too, as `comparable` makes them. */
  readonly folded: readonly string[];
}

export interface GardenPlant extends Named {
  readonly type: 'plant';
  readonly botanical: string;
  readonly kind: PlantKind;
  /** Empty where the class comes from memory. */
  readonly byRegion: ClassByRegion;
  /** That of most regions; of several the one that takes most water. */
  readonly class: WaterUseClassId;
  readonly isClassFromMemory: boolean;
  readonly spreadFt: { readonly least: number; readonly most: number };
  readonly isSpreadFromMemory: boolean;
}

/** A crop of FAO-56. */
export interface GardenCrop extends Named {
  readonly type: 'crop';
  readonly crop: CropId;
}

export type ListedPlant = GardenPlant | GardenCrop;

export function plantList(): readonly ListedPlant[] {
  return [...crops(), ...rowsOf(PLANT_ROWS.en).map(plantOf)];
}

const rowsOf = (text: string): readonly string[] => text.trim().split('\n');

function crops(): readonly GardenCrop[] {
  const others = new Map(
    rowsOf(CROP_NAMES.en).map((row) => {
      const [crop = '', names = ''] = row.split('|');
      return [crop, names.split(';')] as const;
    }),
  );
  return CROP_IDS.map((crop) => named({ type: 'crop', crop }, [findCrop(crop).name.en, ...(others.get(crop) ?? [])]));
}

function plantOf(row: string): GardenPlant {
  const [names = '', botanical = '', kind = '', classes = '', spread = ''] = row.split('|');
  const [least = 0, most = least] = spread.replace('w', '').split('-').map(Number);
  const byRegion = classes.startsWith('=') ? {} : regionsOf(classes);
  return named(
    {
      type: 'plant',
      botanical,
      kind: KINDS[kind as keyof typeof KINDS],
      byRegion,
      class: classes.startsWith('=') ? classAt(classes.slice(1)) : usualClass(Object.values(byRegion)),
      isClassFromMemory: classes.startsWith('='),
      spreadFt: { least, most },
      isSpreadFromMemory: !spread.endsWith('w'),
    } as const,
    names.split(';'),
    botanical,
  );
}

function named<Plant>(plant: Plant, names: readonly string[], ...others: readonly string[]): Plant & Named {
  return { ...plant, names, folded: [...names, ...others].map(comparable) };
}

function classAt(letter: string): WaterUseClassId {
  const found = CLASSES[letter];
  if (found === undefined) throw new RangeError(`There is no class "${letter}".`);
  return found;
}

function regionsOf(letters: string): ClassByRegion {
  return Object.fromEntries(
    PLANT_REGIONS.flatMap((region, index) => {
      const found = CLASSES[letters[index] ?? ''];
      return found === undefined ? [] : [[region, found]];
    }),
  );
}

function usualClass(classes: readonly WaterUseClassId[]): WaterUseClassId {
  const count = (id: WaterUseClassId) => classes.filter((each) => each === id).length;
  const most = Math.max(...WATER_USE_CLASS_IDS.map(count));
  const found = WATER_USE_CLASS_IDS.findLast((id) => count(id) === most);
  if (found === undefined || most === 0) throw new RangeError('A plant has no class in any region.');
  return found;
}
