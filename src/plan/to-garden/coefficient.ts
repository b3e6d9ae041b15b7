/** What a planting uses as a share of reference ET: by class, by type, or by crop. */
import { type DayNumber, dayNumber } from '../../engine/calendar.ts';
import type { PlantCoefficient } from '../../engine/garden.ts';
import type { Names } from '../../engine/names.ts';
import type { CropId } from '../../engine/plants/crops.data.ts';
import { cropStagesOf, findCrop } from '../../engine/plants/find-crop.ts';
import { type Mulch, mulchedCoefficients, mulchedLandscapeFactor } from '../../engine/plants/mulch.ts';
import { PLANT_TYPES } from '../../engine/plants/plant-types.data.ts';
import { WATER_USE_CLASSES } from '../../engine/plants/water-use-classes.data.ts';
import { DEFAULTS } from '../defaults.ts';
import type { PlanNeed } from '../schema/plan-schema.ts';

type CropNeed = Extract<PlanNeed, { kind: 'crop' }>;
type LandscapeNeed = Exclude<PlanNeed, CropNeed>;

const classById = new Map(WATER_USE_CLASSES.map((row) => [row.id, row]));
const typeById = new Map(PLANT_TYPES.map((row) => [row.id, row]));

export function landscapeCoefficientOf(need: LandscapeNeed): PlantCoefficient {
  const { name, factor, source } = published(need);
  return {
    kind: 'landscape',
    name,
    factor: need.factor ?? factor,
    density: need.density ?? DEFAULTS.density,
    microclimate: need.microclimate ?? DEFAULTS.microclimate,
    source: need.factor === undefined ? source : undefined,
  };
}

function published(need: LandscapeNeed): { readonly name: Names; readonly factor: number; readonly source: string } {
  if (need.kind === 'class') {
    const row = classById.get(need.class);
    if (row === undefined) throw new RangeError(`There is no water-use class "${need.class}".`);
    return { name: row.name, factor: row.speciesFactor, source: row.source };
  }
  const row = typeById.get(need.type);
  if (row === undefined) throw new RangeError(`There is no plant type "${need.type}".`);
  return { name: row.name, factor: row.plantFactor, source: row.source };
}

/** Days of the four stages: as typed, else the crop's first published row. */
export function stageDaysOf(need: CropNeed): readonly [number, number, number, number] {
  if (need.stages) return [need.stages.initial, need.stages.development, need.stages.mid, need.stages.late];
  const row = cropStagesOf(need.crop)[0];
  if (row === undefined) throw new RangeError(`There are no growth stages for "${need.crop}".`);
  return [row.iniDays, row.devDays, row.midDays, row.lateDays];
}

export function growthDays(need: CropNeed): number {
  return stageDaysOf(need).reduce((sum, days) => sum + days, 0);
}

/** `pulledOn`: its last day in the ground, where the plan names one. */
export function cropCoefficientOf(need: CropNeed, pulledOn: DayNumber | undefined): PlantCoefficient {
  const crop = findCrop(need.crop);
  const plantedOn = dayNumber(need.plantedOn);
  const typed = need.coefficients;
  const row = need.stages ? undefined : cropStagesOf(need.crop)[0];
  return {
    kind: 'crop',
    name: crop.name,
    plantedOn,
    ...(crop.perennial ? { perennial: true } : {}),
    stageDays:
      pulledOn === undefined || crop.perennial
        ? stageDaysOf(need)
        : stagesUntilPulled(stageDaysOf(need), pulledOn - plantedOn + 1),
    kcInitial: typed?.initial ?? crop.kcIni,
    kcMid: typed?.mid ?? crop.kcMid,
    kcEnd: typed?.end ?? crop.kcEnd,
    source: typed ? undefined : crop.source,
    stagesSource: row?.source,
  };
}

/** Under mulch (FAO-56 ch. 10). */
export function mulchedCrop(coefficient: PlantCoefficient, mulch: Mulch | undefined, crop: CropId): PlantCoefficient {
  if (mulch === undefined || coefficient.kind !== 'crop') return coefficient;
  const { kcInitial: kcIni, kcMid, kcEnd } = coefficient;
  const kc = mulchedCoefficients({ kcIni, kcMid, kcEnd }, mulch, crop);
  return {
    ...coefficient,
    kcInitial: kc.kcIni,
    kcMid: kc.kcMid,
    kcEnd: kc.kcEnd,
    bareKc: [kcIni, kcMid, kcEnd],
  };
}

export function mulchedLandscape(coefficient: PlantCoefficient, mulch: Mulch | undefined): PlantCoefficient {
  if (mulch === undefined || coefficient.kind !== 'landscape') return coefficient;
  return { ...coefficient, mulchFactor: mulchedLandscapeFactor(mulch) };
}

/** The late stage runs until harvest (FAO-56 p. 103): an annual that stands longer than its stages has a longer one. */
function stagesUntilPulled(
  [initial, development, mid, late]: readonly [number, number, number, number],
  standsDays: number,
): readonly [number, number, number, number] {
  return [initial, development, mid, Math.max(late, standsDays - initial - development - mid)];
}
