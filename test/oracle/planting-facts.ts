/** Everything about a planting that does not depend on how it is watered, day by day. Depths in mm over its ground. */
import type { Garden, GardenPlanting, GardenZone } from '../../src/engine/garden.ts';
import type { SeasonYears } from '../../src/engine/rain/season-years.ts';
import { coefficientOn, depletionShare, targetMmOn, totalAvailableMm } from './crop.ts';
import { keptShares } from './kept-rain.ts';
import { monthName, monthShares } from './month-shares.ts';
import type { NearTies } from './near-ties.ts';
import { soakedRain } from './rain.ts';
import type { WeatherDay } from './weather.ts';

export interface PlantingFacts {
  readonly planting: GardenPlanting;
  readonly tawMm: number;
  readonly startMm: number;
  readonly days: readonly PlantingDay[];
}

export interface DemandDay {
  /** Of the calendar; counted as the garden counts. */
  readonly date: number;
  readonly inGround: boolean;
  /** K: ETc over reference ET. */
  readonly coefficient: number;
  readonly etcMm: number;
  /** Readily available water at that use. */
  readonly rawMm: number;
  /** The same by the normals. */
  readonly expectedEtcMm: number;
  readonly expectedRawMm: number;
  /** By the normals, too. */
  readonly expectedEtoMm: number;
  readonly normalRainMm: number;
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
  const tawMm = totalAvailableMm(planting, zone.soil.availableWater);
  const startMm = planting.rootZone.startDepletion * planting.rootZone.allowedDepletion * tawMm;
  const demand = weather.map((day) => demandOn(planting, tawMm, day));
  const { rain, climate } = garden.site;
  const shares =
    rain.method === 'balance'
      ? keptShares({ planting, wateringDays: zone.wateringDays, tawMm, startMm, demand, rain, ties }, around.years())
      : monthShares({ ...rain, method: rain.method }, climate.rainMm, {
          planting,
          wateringDays: zone.wateringDays,
          demand,
        });
  const days = demand.map((day, index): PlantingDay => {
    const fell = weather[index] as WeatherDay;
    const expectedRainMm = day.inGround ? fell.normalRainMm * (shares.get(monthName(day.date)) ?? Number.NaN) : 0;
    const readMm = day.inGround ? soakedRain(fell.rainMm, fell.etoMm, rain) : 0;
    return {
      ...day,
      rainMm: fell.rainMm,
      soakedMm: fell.rainFrom === 'normals' ? expectedRainMm : readMm,
      expectedRainMm,
      ...lineOn(planting, zone.efficiency, day),
    };
  });
  return { planting, tawMm, startMm, days };
}

function demandOn(planting: GardenPlanting, tawMm: number, day: WeatherDay): DemandDay {
  const inGround = day.day >= planting.from && day.day <= planting.to;
  const coefficient = inGround ? coefficientOn(planting, day.day) : 0;
  const etcMm = coefficient * day.etoMm;
  const expectedEtcMm = coefficient * day.normalEtoMm;
  return {
    date: day.day,
    inGround,
    coefficient,
    etcMm,
    rawMm: depletionShare(planting, etcMm) * tawMm,
    expectedEtcMm,
    expectedRawMm: depletionShare(planting, expectedEtcMm) * tawMm,
    expectedEtoMm: day.normalEtoMm,
    normalRainMm: day.normalRainMm,
    targetMm: targetMmOn(planting, tawMm, day.day),
  };
}

function lineOn({ lines, areaM2 }: GardenPlanting, efficiency: number, { inGround, date }: DemandDay) {
  const line = inGround ? lines.filter(({ from }) => from <= date).at(-1) : undefined;
  const flowLph = line?.flowLph ?? 0;
  const grossMmPerMinute = flowLph / areaM2 / 60;
  return { grossMmPerMinute, netMmPerMinute: grossMmPerMinute * efficiency, flowLpm: flowLph / 60 };
}
