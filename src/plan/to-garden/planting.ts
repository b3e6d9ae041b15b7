/** One planting: its need, its ground, its days and its lines. */
import { type DayNumber, dayNumber } from '../../engine/calendar.ts';
import type { GardenPlanting } from '../../engine/garden.ts';
import { toSi, type UnitSystem } from '../../engine/units.ts';
import type { PlanPlanting } from '../schema/plan-schema.ts';
import { cropCoefficientOf, landscapeCoefficientOf } from './coefficient.ts';
import { groundDays } from './ground-days.ts';
import { keptAtPlaces, keptUnder } from './kept.ts';
import { linesOf } from './line.ts';
import { rootZoneOf } from './root-zone.ts';

export interface PlantingContext {
  readonly units: UnitSystem;
  readonly seasonFirst: DayNumber;
  readonly seasonLast: DayNumber;
}

export const plantingOf = keptUnder((planting: PlanPlanting, context: PlantingContext): GardenPlanting => {
  const { need, establishing, rootDepth, allowedDepletion, target, startDepletion, ...others } = planting;
  const { id, name, extent: _extent, watering, inGround, shutOff, lines, note, ...unread } = others;
  // A field that nobody reads is named here by the compiler.
  unread satisfies Readonly<Record<string, never>>;
  const { units, seasonFirst, seasonLast } = context;
  const ground = groundDays(planting, { first: seasonFirst, last: seasonLast });
  const extent = extentOf(planting.extent, units);
  return {
    id: planting.id,
    name: planting.name,
    coefficient: coefficientOf(planting),
    establishing: establishing && { until: dayNumber(establishing.until), factor: establishing.factor },
    areaM2: extent.areaM2,
    plants: extent.plants,
    rootZone: rootZone(need, { rootDepth, allowedDepletion, target, startDepletion, units }),
    watering: planting.watering ?? usualWatering(planting),
    from: ground.from,
    to: ground.to,
    hasShutOff: planting.shutOff ?? false,
    lines: linesOf(planting.lines, { units, firstDay: ground.from, ...extent }),
  };
});

function coefficientOf({ need, inGround }: PlanPlanting): GardenPlanting['coefficient'] {
  if (need.kind !== 'crop') return landscapeCoefficient(need, NOTHING_ELSE);
  return cropCoefficient(need, { pulledOn: inGround?.to === undefined ? undefined : dayNumber(inGround.to) });
}

const NOTHING_ELSE = {};
const landscapeCoefficient = keptAtPlaces(landscapeCoefficientOf);
const rootZone = keptAtPlaces(rootZoneOf);
const cropCoefficient = keptAtPlaces(
  (need: Parameters<typeof cropCoefficientOf>[0], { pulledOn }: { readonly pulledOn: DayNumber | undefined }) =>
    cropCoefficientOf(need, pulledOn),
);

/** Vegetables keep; shrubs and the like behind a shut-off are refilled (design of this kit, after common practice). */
function usualWatering({ need, shutOff }: PlanPlanting): 'keep' | 'refill' {
  return need.kind !== 'crop' && shutOff ? 'refill' : 'keep';
}

/** Ground as seen from above. Where an area is given, one round plant of that area stands for it. */
function extentOf(extent: PlanPlanting['extent'], units: UnitSystem) {
  if (extent.kind === 'area') {
    const areaM2 = toSi(extent.area, 'area', units);
    return { areaM2, plants: undefined, canopyDiameterM: 2 * Math.sqrt(areaM2 / Math.PI) };
  }
  const canopyDiameterM = toSi(extent.diameter, 'diameter', units);
  return { areaM2: (extent.count * Math.PI * canopyDiameterM ** 2) / 4, plants: extent.count, canopyDiameterM };
}
