/** Everything about a planting that does not depend on how it is watered, day by day. */
import type { Garden, GardenPlanting, GardenZone } from '../../src/engine/garden.ts';
import { daysIn, type YearMonth, yearMonthOf } from './calendar.ts';
import { coefficientOn, depletionShare, totalAvailableMm } from './crop.ts';
import { effectiveRain } from './rain.ts';
import type { WeatherDay } from './weather.ts';

export interface PlantingFacts {
  readonly planting: GardenPlanting;
  readonly tawMm: number;
  readonly targetMm: number;
  readonly startMm: number;
  readonly days: readonly PlantingDay[];
}

export interface PlantingDay {
  readonly inGround: boolean;
  readonly rainMm: number;
  readonly etcMm: number;
  readonly rawMm: number;
  readonly soakedMm: number;
  readonly grossMmPerMinute: number;
  readonly netMmPerMinute: number;
  readonly flowLpm: number;
}

type Demand = Omit<PlantingDay, 'soakedMm'>;

export function plantingFacts(
  garden: Garden,
  zone: GardenZone,
  planting: GardenPlanting,
  weather: readonly WeatherDay[],
): PlantingFacts {
  const tawMm = totalAvailableMm(planting, zone.soil.availableWater);
  const demand = weather.map((day) => demandOn(planting, zone, tawMm, day));
  const shares = monthShares(garden, weather, demand);
  const runoff = garden.site.rain.runoffFraction;
  return {
    planting,
    tawMm,
    targetMm: planting.rootZone.targetDepletion * planting.rootZone.allowedDepletion * tawMm,
    startMm: planting.rootZone.startDepletion * planting.rootZone.allowedDepletion * tawMm,
    days: demand.map((fact, place) => ({
      ...fact,
      soakedMm: soakedOn(weather[place] as WeatherDay, fact, runoff, shares),
    })),
  };
}

function demandOn(planting: GardenPlanting, zone: GardenZone, tawMm: number, weather: WeatherDay): Demand {
  const inGround = weather.day >= planting.from && weather.day <= planting.to;
  const etcMm = inGround ? coefficientOn(planting, weather.day) * weather.etoMm : 0;
  const line = inGround ? planting.lines.filter(({ from }) => from <= weather.day).at(-1) : undefined;
  const flowLph = line?.flowLph ?? 0;
  const grossMmPerMinute = flowLph / planting.areaM2 / 60;
  return {
    inGround,
    rainMm: weather.rainMm,
    etcMm,
    rawMm: depletionShare(planting, etcMm) * tawMm,
    grossMmPerMinute,
    netMmPerMinute: grossMmPerMinute * zone.efficiency,
    flowLpm: flowLph / 60,
  };
}

function soakedOn(day: WeatherDay, fact: Demand, runoff: number, shares: ReadonlyMap<string, number>): number {
  if (!fact.inGround) return 0;
  // FAO-56 p. 170: a day's rain below 0.2 ETo evaporates.
  if (day.rainFrom === 'day') return day.rainMm < 0.2 * day.etoMm ? 0 : day.rainMm * (1 - runoff);
  if (day.rainFrom === 'week') return day.rainMm * (1 - runoff);
  return day.rainMm * (shares.get(monthName(day)) ?? Number.NaN);
}

/** Share of each month's normal rain that counts for this planting. */
function monthShares(
  garden: Garden,
  weather: readonly WeatherDay[],
  demand: readonly Demand[],
): ReadonlyMap<string, number> {
  const factsOf = new Map<string, Demand[]>();
  const shares = new Map<string, number>();
  weather.forEach((day, place) => {
    const fact = demand[place];
    if (!fact?.inGround) return;
    const facts = [...(factsOf.get(monthName(day)) ?? []), fact];
    factsOf.set(monthName(day), facts);
    shares.set(monthName(day), shareOf(garden, yearMonthOf(day.day), facts));
  });
  return shares;
}

function shareOf(garden: Garden, month: YearMonth, facts: readonly Demand[]): number {
  const rainMm = garden.site.climate.rainMm[month.month] ?? 0;
  if (rainMm === 0) return 0;
  const mean = (figure: (fact: Demand) => number) => facts.reduce((sum, fact) => sum + figure(fact), 0) / facts.length;
  const etcMm = mean((fact) => fact.etcMm) * daysIn(month);
  return effectiveRain(garden.site.rain, { rainMm, etcMm, storageMm: mean((fact) => fact.rawMm) }) / rainMm;
}

function monthName({ day }: WeatherDay): string {
  const { year, month } = yearMonthOf(day);
  return `${year}/${month}`;
}
