/** Everything about a planting that does not depend on how it is watered, day by day. Depths in mm over its ground. */
import type { Garden, GardenPlanting, GardenSupply, GardenZone } from '../../src/engine/garden.ts';
import type { SeasonYears } from '../../src/engine/rain/season-years.ts';
import { yearMonthOf } from './calendar.ts';
import {
  coefficientOn,
  depletionShare,
  isEstablishingOn,
  isWhollyWetted,
  rainFactorOf,
  restOn,
  rootDepthOn,
  targetMmOn,
  totalAvailableMm,
  wettedShareIn,
} from './crop.ts';
import { keptShares } from './kept-rain.ts';
import { monthMasks, usualByMonth } from './month-masks.ts';
import { type MonthShares, monthName, monthShares } from './month-shares.ts';
import type { NearTies } from './near-ties.ts';
import { flowsOn } from './planting-flow.ts';
import { soakedRain } from './rain.ts';
import type { Stores } from './root-zone-day.ts';
import type { WeatherDay } from './weather.ts';

export interface PlantingFacts {
  readonly planting: GardenPlanting;
  readonly storesIn: (week: number) => Stores;
  /** Missing at the start in each store. */
  readonly startMm: number;
  /** Of what is brought, the part that is to drain and carry salt away. */
  readonly leachingFraction: number;
  /** All of its ground, all season. */
  readonly isWhollyWetted: boolean;
  readonly days: readonly PlantingDay[];
}

export interface DemandDay {
  /** Of the calendar; counted as the garden counts. */
  readonly date: number;
  readonly inGround: boolean;
  /** It asks for nothing. */
  readonly isResting: boolean;
  readonly isEstablishing: boolean;
  /** It is establishing, or its roots still grow. */
  readonly isYoung: boolean;
  /** K: ETc over reference ET. */
  readonly coefficient: number;
  readonly etcMm: number;
  /** Total available water. */
  readonly tawMm: number;
  /** Missing water of the soil that its roots reach at its start. */
  readonly rootedMm: number;
  /** Readily available water at that use. */
  readonly rawMm: number;
  /** The same by the normals. */
  readonly expectedEtcMm: number;
  readonly expectedRawMm: number;
  /** By the normals, too. */
  readonly expectedEtoMm: number;
  readonly normalRainMm: number;
  readonly usualRainMm: number;
  /** Depletion that watering may leave. */
  readonly targetMm: number;
}

export interface PlantingDay extends DemandDay {
  readonly rainMm: number;
  /** Rain that enters the soil. */
  readonly soakedMm: number;
  /** Of the normal rain, what is counted on. */
  readonly expectedRainMm: number;
  readonly grossMmPerMinute: number;
  readonly netMmPerMinute: number;
  readonly flowLpm: number;
}

export interface Surroundings {
  readonly garden: Garden;
  readonly zone: GardenZone;
  readonly weather: readonly WeatherDay[];
  /** Only the method `balance` asks for them. */
  readonly years: () => SeasonYears;
  readonly ties: NearTies;
}

export function plantingFacts(around: Surroundings, planting: GardenPlanting): PlantingFacts {
  const { garden, zone, weather, ties } = around;
  const leachingFraction = planting.leachingFraction ?? 0;
  const isPot = planting.container !== undefined;
  const shareIn = (week: number) => wettedShareIn(planting, week);
  const demand = withRoots(
    planting,
    weather.map((day) => demandOn(planting, zone, day)),
  );
  const startMm = startShareOf(planting) * (demand.find(({ inGround }) => inGround)?.tawMm ?? 0);
  const { rain, climate } = garden.site;
  const sharesUnder = (wateringDays: number, share: number) =>
    rain.method === 'balance'
      ? keptShares(
          { planting, stores: { share, isPot }, leachingFraction, wateringDays, startMm, demand, rain, ties },
          around.years(),
        )
      : monthShares({ ...rain, method: rain.method }, climate.rainMm, { planting, wateringDays, demand });
  const factor = rainFactorOf(planting);
  const shareOn = sharesByMonth(sharesUnder, {
    maskOf: monthMasks(zone, garden.span),
    wettedOf: usualByMonth(garden.span, shareIn),
  });
  const days = demand.map((day, index): PlantingDay => {
    const fell = weather[index] as WeatherDay;
    const expectedRainMm = day.inGround ? day.normalRainMm * shareOn(day.date) : 0;
    const readMm = day.inGround ? factor * soakedRain(fell.rainMm, fell.etoMm, rain) : 0;
    return {
      ...day,
      rainMm: factor * fell.rainMm,
      soakedMm: fell.rainFrom === 'normals' ? expectedRainMm : readMm,
      expectedRainMm,
      ...linesOn(planting, garden.supply, zone.efficiency, day),
    };
  });
  const storesIn = (week: number) => ({ share: shareIn(week), isPot });
  return { planting, storesIn, startMm, leachingFraction, isWhollyWetted: isWhollyWetted(planting), days };
}

/** Of the available water, what is missing at the start, and in the soil that roots reach later. */
function startShareOf({ rootZone }: GardenPlanting): number {
  return rootZone.startDepletion * rootZone.allowedDepletion;
}

function demandOn(planting: GardenPlanting, { soil }: GardenZone, day: WeatherDay): BareDay {
  const inGround = day.day >= planting.from && day.day <= planting.to;
  const tawMm = totalAvailableMm(planting, soil.availableWater, day.day);
  const coefficient = inGround ? coefficientOn(planting, day.day) : 0;
  const etcMm = coefficient * day.etoMm;
  const expectedEtcMm = coefficient * day.normalEtoMm;
  return {
    date: day.day,
    inGround,
    isResting: restOn(planting, day.day) !== undefined,
    isEstablishing: isEstablishingOn(planting, day.day),
    isYoung: isEstablishingOn(planting, day.day) || rootDepthOn(planting, day.day) < planting.rootZone.depthM,
    coefficient,
    etcMm,
    tawMm,
    rawMm: depletionShare(planting, etcMm) * tawMm,
    expectedEtcMm,
    expectedRawMm: depletionShare(planting, expectedEtcMm) * tawMm,
    expectedEtoMm: day.normalEtoMm,
    normalRainMm: rainFactorOf(planting) * day.normalRainMm,
    usualRainMm: rainFactorOf(planting) * day.usualRainMm,
    // What is to drain leaves no room for rain.
    targetMm: (planting.leachingFraction ?? 0) > 0 ? 0 : targetMmOn(planting, tawMm, day.day),
  };
}

/** Roots grow from one day in the ground of the season to the next. */
function withRoots(planting: GardenPlanting, days: readonly BareDay[]): readonly DemandDay[] {
  return days.map((day, index) => {
    const before = days[index - 1];
    const grownMm = day.inGround && before?.inGround ? day.tawMm - before.tawMm : 0;
    return { ...day, rootedMm: startShareOf(planting) * grownMm };
  });
}

type BareDay = Omit<DemandDay, 'rootedMm'>;

interface OfMonths {
  /** Watering days. */
  readonly maskOf: (month: number) => number;
  /** Share of the ground that is wetted. */
  readonly wettedOf: (month: number) => number;
}

/** Each month's share is that of the season under the watering days, and with the wetted share, of the month. */
function sharesByMonth(sharesUnder: (mask: number, wetted: number) => MonthShares, { maskOf, wettedOf }: OfMonths) {
  const known = new Map<string, MonthShares>();
  return (date: number): number => {
    const { month } = yearMonthOf(date);
    const name = `${maskOf(month)} ${wettedOf(month)}`;
    const shares = known.get(name) ?? sharesUnder(maskOf(month), wettedOf(month));
    known.set(name, shares);
    return shares.get(monthName(date)) ?? Number.NaN;
  };
}

/** All lines of the day together: each with its own share that stays where it is wanted. */
function linesOn(planting: GardenPlanting, supply: GardenSupply, usual: number, { inGround, date }: DemandDay) {
  const flows = inGround ? flowsOn(planting, supply, date) : [];
  const grossLph = flows.reduce((sum, { flowLph }) => sum + flowLph, 0);
  const netLph = flows.reduce((sum, { line, flowLph }) => sum + flowLph * (line.efficiency ?? usual), 0);
  const perMinute = (lph: number) => lph / planting.areaM2 / 60;
  return { grossMmPerMinute: perMinute(grossLph), netMmPerMinute: perMinute(netLph), flowLpm: grossLph / 60 };
}
