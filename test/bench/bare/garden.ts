/** A garden flattened into typed arrays, for the bare loop: one number a planting, a zone or a day, and nothing else. */
import { daysInMonth, monthOf, yearOf } from '../../../src/engine/calendar.ts';
import type { Garden, GardenPlanting, GardenZone, PlantCoefficient } from '../../../src/engine/garden.ts';
import { NORMALS } from '../../../src/engine/rain/daily-rain.ts';
import { rainDayShare } from '../../../src/engine/rain/rain-days.ts';
import { AlikeDemands } from '../../../src/engine/season/alike-demands.ts';
import { seasonWeather, type Weather } from '../../../src/engine/weather.ts';
import { sharesByWeek, usualByMonth } from './wetted-shares.ts';

export interface BareGarden {
  readonly weather: BareWeather;
  readonly zones: BareZones;
  readonly plantings: BarePlantings;
  readonly keepers: BareKeepers;
}

export interface BareWeather {
  readonly days: number;
  readonly weeks: number;
  readonly eto: Float64Array;
  /** What the normals say, what soaks in of rain that was read, and the days on which it was. */
  readonly normalRain: Float64Array;
  readonly soakedRain: Float64Array;
  readonly isRead: Uint8Array;
  /** By month of the season: its first day, and one more for the end. */
  readonly monthStart: Int32Array;
  /** Days of a week on which its total falls. */
  readonly wetDays: Int32Array;
  /** The same days in many years, one after another. */
  readonly years: number;
  readonly yearRain: Float64Array;
  readonly yearEtoShare: Float64Array;
}

/** What plantings that use the same and are watered alike share: one of them, and their zone's watering days. */
export interface BareKeepers {
  readonly planting: Int32Array;
  readonly mask: Int32Array;
}

export interface BareZones {
  /** First planting of each zone, and one more for the end. */
  readonly plantingStart: Int32Array;
  readonly mask: Int32Array;
  readonly areaWeighted: Uint8Array;
  readonly step: Float64Array;
  readonly longest: Float64Array;
  readonly starts: Int32Array;
  readonly efficiency: Float64Array;
  /** Minutes of a week set by hand, NaN elsewhere; week by week for each zone. */
  readonly handMinutes: Float64Array;
}

export interface BarePlantings {
  readonly first: Int32Array;
  readonly end: Int32Array;
  readonly isCrop: Uint8Array;
  /** Landscape factor, or Kc of the first stage. */
  readonly kc: Float64Array;
  readonly kcMid: Float64Array;
  readonly kcEnd: Float64Array;
  /** Day of the season on which growth starts, and the days after it on which its four stages end. */
  readonly grows: Int32Array;
  readonly stageEnds: Float64Array;
  readonly establishUntil: Int32Array;
  readonly establishFactor: Float64Array;
  /** With full roots, and its share with those of a crop that is planted: 1 where they do not grow. */
  readonly taw: Float64Array;
  readonly tawShareAtFirst: Float64Array;
  readonly fraction: Float64Array;
  readonly adjusts: Uint8Array;
  readonly target: Float64Array;
  /** None where roots grow: new soil would be as dry. */
  readonly start: Float64Array;
  readonly refills: Uint8Array;
  readonly shutOff: Uint8Array;
  /** Of the ground, what lines wet: for each planting by month of the season, by week, and whether it is a part in any. */
  readonly wettedByMonth: Float64Array;
  readonly wettedByWeek: Float64Array;
  readonly isPartly: Uint8Array;
  readonly area: Float64Array;
  readonly keeper: Int32Array;
  /** Net mm a minute of the first line, and of the second from its day on. */
  readonly rate: Float64Array;
  readonly laterRate: Float64Array;
  readonly later: Int32Array;
}

export function bareGarden(garden: Garden): BareGarden {
  const weather = seasonWeather(garden);
  const plantings = garden.zones.flatMap((zone) => zone.plantings.map((planting) => ({ planting, zone })));
  const { keeper, keepers } = bareKeepers(plantings, weather);
  return {
    weather: bareWeather(garden, weather),
    zones: bareZones(garden.zones, garden.span.weeks),
    plantings: { ...barePlantings(plantings, weather), keeper },
    keepers,
  };
}

function bareWeather(garden: Garden, { firstDay, days, eto, rain, months, years: ofSite }: Weather): BareWeather {
  const { years, rainMm, etoShare } = ofSite();
  // It runs year after year.
  const byYear = (byDay: Float64Array) => byDay.map((_, at) => byDay[(at % days) * years + Math.floor(at / days)] ?? 0);
  return {
    days,
    weeks: days / 7,
    eto: eto.mm,
    normalRain: rain.expectedMm,
    soakedRain: rain.soakedMm,
    isRead: rain.origin.map((origin) => Number(origin !== NORMALS)),
    monthStart: Int32Array.from(months.starts),
    wetDays: Int32Array.from({ length: days / 7 }, (_, week) => usualWetDays(garden, firstDay + 7 * week + 3)),
    years,
    yearRain: byYear(rainMm),
    yearEtoShare: byYear(etoShare),
  };
}

/** Of a week around a day. */
function usualWetDays({ site }: Garden, middle: number): number {
  const month = monthOf(middle);
  const monthDays = daysInMonth(yearOf(middle), month);
  const rainMm = site.climate.rainMm[month] ?? Number.NaN;
  const share = rainDayShare({ rainMm, rainDays: site.climate.rainDays?.[month], monthDays });
  return Math.max(1, Math.round(7 * share));
}

function bareKeepers(list: readonly InZone[], weather: Weather) {
  const alike = new AlikeDemands();
  const keys = list.map(({ planting, zone }) => ({
    demand: alike.demandOf({ planting, soil: zone.soil }, weather),
    refills: planting.watering === 'refill',
    mask: zone.wateringDays,
  }));
  const isSame = (one: (typeof keys)[number], other: (typeof keys)[number]) =>
    one.demand === other.demand && one.refills === other.refills && one.mask === other.mask;
  const firsts = keys.map((key) => keys.findIndex((other) => isSame(key, other)));
  const planting = [...new Set(firsts)];
  return {
    keeper: Int32Array.from(firsts, (first) => planting.indexOf(first)),
    keepers: {
      planting: Int32Array.from(planting),
      mask: Int32Array.from(planting, (first) => keys[first]?.mask ?? 0),
    },
  };
}

function bareZones(zones: readonly GardenZone[], weeks: number): BareZones {
  let planting = 0;
  return {
    plantingStart: Int32Array.from([0, ...zones.map((zone) => (planting += zone.plantings.length))]),
    mask: Int32Array.from(zones, (zone) => zone.wateringDays),
    areaWeighted: Uint8Array.from(zones, ({ rule }) => Number(rule.kind === 'area-weighted')),
    step: Float64Array.from(zones, (zone) => zone.timerStepMinutes),
    longest: Float64Array.from(zones, (zone) => zone.longestCycleMinutes),
    starts: Int32Array.from(zones, (zone) => zone.startsADay),
    efficiency: Float64Array.from(zones, (zone) => zone.efficiency),
    handMinutes: Float64Array.from(
      zones.flatMap((zone) =>
        Array.from({ length: weeks }, (_, week) => zone.choices.get(week)?.minutes ?? Number.NaN),
      ),
    ),
  };
}

interface InZone {
  readonly planting: GardenPlanting;
  readonly zone: GardenZone;
}

function barePlantings(list: readonly InZone[], { firstDay, days, months }: Weather): Omit<BarePlantings, 'keeper'> {
  const numbers = (of: (planting: GardenPlanting, zone: GardenZone) => number) =>
    Float64Array.from(list, ({ planting, zone }) => of(planting, zone));
  const wholes = (of: (planting: GardenPlanting) => number) => Int32Array.from(list, ({ planting }) => of(planting));
  const flags = (of: (planting: GardenPlanting) => boolean) =>
    Uint8Array.from(list, ({ planting }) => Number(of(planting)));
  const inSeason = (day: number) => Math.min(days, Math.max(0, day - firstDay));
  const taw = (planting: GardenPlanting, zone: GardenZone) =>
    1000 * zone.soil.availableWater * planting.rootZone.depthM;
  const shares = list.map(({ planting }) => sharesByWeek(planting, days / 7));
  const kc = numbers((planting) => stagesOf(planting.coefficient).kc[0]);
  return {
    first: wholes((planting) => inSeason(planting.from)),
    end: wholes((planting) => inSeason(planting.to + 1)),
    isCrop: flags(({ coefficient }) => coefficient.kind === 'crop'),
    kc,
    kcMid: numbers(({ coefficient }) => stagesOf(coefficient).kc[1]),
    kcEnd: numbers(({ coefficient }) => stagesOf(coefficient).kc[2]),
    grows: wholes(({ coefficient }) => (coefficient.kind === 'crop' ? coefficient.plantedOn - firstDay : 0)),
    stageEnds: Float64Array.from(list.flatMap(({ planting }) => stagesOf(planting.coefficient).ends)),
    establishUntil: wholes(({ establishing }) => (establishing ? establishing.until - firstDay : -1)),
    establishFactor: numbers(({ establishing }) => establishing?.factor ?? 1),
    taw: numbers(taw),
    tawShareAtFirst: numbers(({ coefficient, rootZone: { depthM, initialDepthM = depthM } }) =>
      coefficient.kind === 'crop' ? initialDepthM / depthM : 1,
    ),
    fraction: numbers((planting) => planting.rootZone.allowedDepletion),
    adjusts: flags((planting) => planting.rootZone.adjustsDepletion),
    target: numbers(
      (planting, zone) => planting.rootZone.targetDepletion * planting.rootZone.allowedDepletion * taw(planting, zone),
    ),
    start: numbers(
      (planting, zone) => planting.rootZone.startDepletion * planting.rootZone.allowedDepletion * taw(planting, zone),
    ),
    refills: flags((planting) => planting.watering === 'refill'),
    shutOff: flags((planting) => planting.hasShutOff),
    wettedByMonth: Float64Array.from(shares.flatMap((byWeek) => usualByMonth(byWeek, months))),
    wettedByWeek: Float64Array.from(shares.flat()),
    isPartly: Uint8Array.from(shares, (byWeek) => Number(byWeek.some((share) => share < 1))),
    area: numbers((planting) => planting.areaM2),
    rate: numbers((planting, zone) => lineRate(planting, 0) * zone.efficiency),
    laterRate: numbers((planting, zone) => lineRate(planting, 1) * zone.efficiency),
    later: wholes((planting) => inSeason(emitting(planting)[1]?.from ?? firstDay + days)),
  };
}

/** The bench's plantings have one line with emitters or two, the first from the planting's first day on; what they give at their pressure is known. */
function lineRate(planting: GardenPlanting, place: number): number {
  const line = emitting(planting)[place];
  if (line === undefined) return 0;
  const day = Math.max(line.from, planting.from);
  const flow = planting.flows.find(({ from, to }) => from <= day && day <= to);
  return (flow?.linesLph[planting.lines.indexOf(line)] ?? 0) / planting.areaM2 / 60;
}

const emitting = ({ lines }: GardenPlanting) => lines.filter(({ emitters }) => emitters > 0);

function stagesOf(coefficient: PlantCoefficient): {
  readonly kc: readonly [number, number, number];
  readonly ends: readonly number[];
} {
  if (coefficient.kind === 'landscape') {
    const { factor, density, microclimate } = coefficient;
    return { kc: [factor * density * microclimate, 0, 0], ends: [0, 0, 0, 0] };
  }
  const { stageDays, kcInitial, kcMid, kcEnd } = coefficient;
  let end = 0;
  return { kc: [kcInitial, kcMid, kcEnd], ends: stageDays.map((days) => (end += days)) };
}
