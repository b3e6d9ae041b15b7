import { METHOD_EFFICIENCIES } from '../../src/engine/application/efficiencies.data.ts';
import { PUBLISHED_ETO } from '../../src/engine/climate/published-eto.data.ts';
import { CROPS } from '../../src/engine/plants/crops.data.ts';
import { LANDSCAPE_ROOTS } from '../../src/engine/plants/landscape-roots.data.ts';
import { PLANT_TYPES } from '../../src/engine/plants/plant-types.data.ts';
import { WATER_USE_CLASSES } from '../../src/engine/plants/water-use-classes.data.ts';
import { SOIL_TEXTURES } from '../../src/engine/soil/textures.data.ts';
import { ROOF_SURFACES } from '../../src/engine/supply/roof-surfaces.data.ts';

const TABLES: readonly unknown[] = [
  ...[METHOD_EFFICIENCIES, PUBLISHED_ETO, CROPS, LANDSCAPE_ROOTS, PLANT_TYPES, WATER_USE_CLASSES],
  ...[SOIL_TEXTURES, ROOF_SURFACES],
];

/** Every English name of the engine's tables. */
export const namesInTables = (): readonly string[] => [...new Set(TABLES.flatMap(namesUnder))];

function namesUnder(value: unknown): readonly string[] {
  if (typeof value !== 'object' || value === null) return [];
  const { en } = value as { readonly en?: unknown };
  return [...(typeof en === 'string' ? [en] : []), ...Object.values(value).flatMap(namesUnder)];
}
