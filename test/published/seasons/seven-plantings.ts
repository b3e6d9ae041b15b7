/** Seven plantings that span crops, perennials and shrubs, kept and refilled, at 2 to 7 watering days a week; invented. */
import { dayNumber } from '../../../src/engine/calendar.ts';
import type { Garden, GardenPlanting, GardenZone, PlantCoefficient, RootZone } from '../../../src/engine/garden.ts';
import type { GardenSite, ObservedWeather } from '../../../src/engine/garden-weather.ts';
import { plantingFigure } from '../../../src/engine/season/planting-week.ts';
import { runSeason } from '../../../src/engine/season/run-season.ts';
import { lineOf } from '../../support/garden-planting.ts';
import { withFlows } from '../../support/with-flows.ts';

/** April to October. */
export const SPAN = { firstDay: dayNumber('2013-04-01'), weeks: 30 };
const { firstDay, weeks } = SPAN;

export interface TriedPlanting {
  readonly name: string;
  readonly planting: GardenPlanting;
  readonly wateringDays: number;
}

const landscape = (factor: number): PlantCoefficient => ({
  kind: 'landscape',
  name: { en: 'plants' },
  factor,
  density: 1,
  microclimate: 1,
  source: undefined,
});

const crop = (
  plantedAfter: number,
  stageDays: readonly [number, number, number, number],
  [kcInitial, kcMid, kcEnd]: readonly [number, number, number],
): PlantCoefficient => ({
  kind: 'crop',
  name: { en: 'crop' },
  plantedOn: firstDay + plantedAfter,
  stageDays,
  kcInitial,
  kcMid,
  kcEnd,
  source: undefined,
});

/** Filled by winter; room for rain as plans have it by default. */
const roots = (depthM: number, allowedDepletion: number, adjustsDepletion = false): RootZone => ({
  depthM,
  allowedDepletion,
  adjustsDepletion,
  targetDepletion: 0.3,
  startDepletion: 0,
});

function tried(
  name: string,
  wateringDays: number,
  watering: GardenPlanting['watering'],
  coefficient: PlantCoefficient,
  rootZone: RootZone,
  ground = { from: firstDay - 200, to: firstDay + 1000 },
): TriedPlanting {
  const planting: GardenPlanting = {
    id: 'planting',
    name,
    coefficient,
    rootZone,
    watering,
    areaM2: 10,
    hasShutOff: false,
    lines: [lineOf(firstDay - 200, 'dripline', 60)],
    flows: [],
    ...ground,
  };
  return { name, planting, wateringDays };
}

export const SEVEN_PLANTINGS: readonly TriedPlanting[] = [
  tried(
    'tomatoes, kept, 3 days',
    0b1001010,
    'keep',
    crop(45, [30, 40, 45, 30], [0.6, 1.15, 0.8]),
    roots(0.7, 0.4, true),
    {
      from: firstDay + 45,
      to: firstDay + 189,
    },
  ),
  tried('lettuce, kept, 4 days', 0b1010101, 'keep', crop(10, [20, 30, 15, 10], [0.7, 1, 0.95]), roots(0.3, 0.3, true), {
    from: firstDay + 10,
    to: firstDay + 84,
  }),
  tried('flowers, kept, 7 days', 0b1111111, 'keep', landscape(0.8), roots(0.3, 0.5)),
  tried('perennials of 0.6, kept, 2 days', 0b1000100, 'keep', landscape(0.6), roots(0.3, 0.5)),
  tried('perennials of 0.6, refilled, 3 days', 0b1001010, 'refill', landscape(0.6), roots(0.3, 0.5)),
  tried('shrubs of 0.5, refilled, 3 days', 0b1001010, 'refill', landscape(0.5), roots(0.5, 0.5)),
  tried('shrubs of 0.25, refilled, 2 days', 0b1000100, 'refill', landscape(0.25), roots(0.6, 0.5)),
];

/** Ten pots of 10 L, a quarter of a metre across, whose plants cover 0.4 m each: 24 mm of water over them, rain on 0.39 of their ground. */
const POTS = tried('pots of 10 L, kept, 7 days', 0b1111111, 'keep', landscape(1.2), {
  ...roots(0.25, 0.5),
  availableWater: 0.3,
  targetDepletion: 0,
});
const CROWN_M2 = (Math.PI / 4) * 0.4 ** 2;

/** A pot, and a shrub of whose ground lines wet a part. */
export const POT_AND_SHRUB: readonly TriedPlanting[] = [
  {
    ...POTS,
    planting: {
      ...POTS.planting,
      areaM2: 10 * CROWN_M2,
      container: { count: 10, volumeLitres: 10, openingM: 0.25, rainShare: 1 },
      rainFactor: (0.25 / 0.4) ** 2,
    },
  },
  wettedInPart(
    0.3,
    tried('shrubs of 0.5 on a share of 0.3, refilled', 0b1001010, 'refill', landscape(0.5), roots(0.5, 0.5)),
  ),
];

function wettedInPart(wettedShare: number, { planting, ...rest }: TriedPlanting): TriedPlanting {
  return { ...rest, planting: { ...planting, wettedShare } };
}

export interface SeasonWater {
  /** Net irrigation and what was drawn from the soil, mm. */
  readonly waterMm: number;
  readonly etcMm: number;
}

/** The season of a planting alone in its zone, with a timer as fine as need be. */
export function seasonWater(
  { planting, wateringDays }: TriedPlanting,
  site: GardenSite,
  observed: ObservedWeather,
): SeasonWater {
  const zone: GardenZone = {
    id: 'zone',
    name: 'Zone',
    soil: { texture: 'loam', availableWater: 0.15, intakeMmPerHour: 10, slopePercent: 0 },
    wateringDays,
    rule: { kind: 'thirstiest' },
    timerStepMinutes: 0.001,
    longestCycleMinutes: Number.POSITIVE_INFINITY,
    startsADay: 1,
    efficiency: 0.8,
    efficiencyBasis: 'default',
    plantings: [planting],
    choices: new Map(),
  };
  const supply = { sources: [], windowWeekdays: 0b1111111, windowHoursPerDay: 24 };
  const garden: Garden = { span: SPAN, site, observed, supply, zones: [zone] };
  const own = runSeason(withFlows(garden)).zones[0]?.plantings[0];
  if (own === undefined) throw new Error('the season has no planting');
  let irrigationMm = 0;
  let etcMm = 0;
  let drawnMm = 0;
  for (let week = 0; week < weeks; week++) {
    irrigationMm += plantingFigure(own, 'irrigationNetMm', week);
    etcMm += plantingFigure(own, 'demandMm', week);
    drawnMm += plantingFigure(own, 'depletionEndMm', week) - plantingFigure(own, 'depletionStartMm', week);
  }
  return { waterMm: irrigationMm + drawnMm, etcMm };
}
