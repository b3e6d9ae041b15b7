/**
 * What a plan says of the ground of its plantings, reckoned from the document by itself: pots, wetted ground, mulch, days of rest. Units by NIST SP
 * 811; the rules as they are written down here.
 */
import type { GardenPlanting, GardenSupply } from '../../src/engine/garden.ts';
import type { Plan, PlanPlanting, PlanZone } from '../../src/plan/schema/plan-schema.ts';
import { yearMonthOf } from './calendar.ts';
import { flowsOn, type LineFlow } from './planting-flow.ts';
import { daysFrom } from './watering-days.ts';

const LITRES_PER_GALLON = 3.785411784;
const M_PER_INCH = 0.0254;
const M_PER_FOOT = 0.3048;

/** Share of a mix's volume that plants can draw: 25 to 35 % of usual bark mixes (Southern nursery guide, from memory). */
const MIXES = { potting: 0.3, bark: 0.25, peat: 0.35 };

export interface PotInput {
  /** Water that all pots hold, L. */
  readonly waterLitres: number;
  /** Rain over the canopy that comes into the pots, over what falls. */
  readonly rainFactor: number;
}

/** A pot of which no opening is told is as wide as it is tall. */
export function potInput({ units }: Plan, { container, extent }: PlanPlanting, areaM2: number): PotInput | undefined {
  if (container === undefined) return undefined;
  const isUs = units === 'us';
  const litres = container.volume * (isUs ? LITRES_PER_GALLON : 1);
  const count = container.count ?? (extent.kind === 'canopy' ? extent.count : 1);
  const { opening } = container;
  const acrossM =
    opening === undefined ? ((4 * litres) / 1000 / Math.PI) ** (1 / 3) : opening * (isUs ? M_PER_INCH : 0.01);
  return {
    waterLitres: count * litres * (container.availableWater ?? MIXES[container.mix ?? 'potting']),
    rainFactor: (count * (Math.PI / 4) * acrossM ** 2 * (container.rainShare ?? 1)) / areaM2,
  };
}

/** Of the soil's volume: the zone's own, the site's where the zone lies on the site's soil, or undefined: its texture's. */
export function typedWater({ site }: Plan, { availableWater, soil }: PlanZone): number | undefined {
  return availableWater ?? (soil === undefined ? site.availableWater : undefined);
}

/** FAO-56 ch. 10: what mulch leaves of Kc initial, and of Kc mid and end. */
export interface MulchEffect {
  readonly initial: (kc: number) => number;
  readonly later: number;
}

/** Table 25 (p. 196), the lesser end of each range; the mean row for others. */
const UNDER_PLASTIC: Readonly<Record<string, number>> = {
  'squash-zucchini': 0.05,
  'pumpkin-winter-squash': 0.05,
  cucumber: 0.15,
  watermelon: 0.25,
  tomato: 0.35,
};

/**
 * Under organic mulch soil evaporates 5 % less for each 10 % that is covered; of Kc mid and end 5 % is taken to be evaporation (p. 197: 5 to 10 %).
 * Under plastic Kc initial is 0.10 at most.
 */
export function mulchEffect({ mulch, need }: Pick<PlanPlanting, 'mulch' | 'need'>): MulchEffect {
  if (mulch === undefined) return { initial: (kc) => kc, later: 1 };
  if (mulch.kind === 'organic') {
    const less = 0.5 * (mulch.cover ?? 1);
    return { initial: (kc) => kc * (1 - less), later: 1 - 0.05 * less };
  }
  const less = need.kind === 'crop' ? (UNDER_PLASTIC[need.crop] ?? 0.1) : 0.1;
  return { initial: (kc) => Math.min(kc, 0.1), later: 1 - less };
}

/** Days before harvest in which bulbs are left to dry (common practice, no source). */
const DRY_DOWN: Readonly<Record<string, number>> = { 'onion-dry': 14, garlic: 14 };

/** Whether it asks for nothing on a day: its month has frost in the ground or finds it leafless, or it is left to dry. */
export function restsOn(
  plan: Plan,
  planting: PlanPlanting,
  isAnnual: boolean,
  { to, day }: { to: number; day: number },
) {
  const { month } = yearMonthOf(day);
  const lowest = plan.site.climate.minTemperature?.[month];
  const freezing = plan.units === 'us' ? 32 : 0;
  if (lowest !== undefined && lowest < freezing) return true;
  if (planting.leaflessMonths?.includes(month + 1)) return true;
  const isPulled = isAnnual || planting.inGround?.to !== undefined;
  const usual = planting.need.kind === 'crop' ? (DRY_DOWN[planting.need.crop] ?? 0) : 0;
  return isPulled && day > to - (planting.dryDownDays ?? usual);
}

/**
 * Across the ground that one emitter of 1 gph wets in even soil under roots of 2.5 and of 5 ft, ft: USDA-NRCS NEH 623 ch. 7 after Keller and
 * Karmeli, from memory. Other depths and flows by the exponents of Schwartzman and Zur (1986), from memory.
 */
const WIDTHS_FT = { coarse: [1.5, 2.5], medium: [3, 4], fine: [3.5, 5] } as const;

function groupOf(texture: string): keyof typeof WIDTHS_FT {
  if (['sand', 'loamy-sand', 'sandy-loam'].includes(texture)) return 'coarse';
  return ['loam', 'silt-loam', 'silt'].includes(texture) ? 'medium' : 'fine';
}

export function wettedWidthM(texture: string, depthM: number, flowLph: number): number {
  const [shallow, deep] = WIDTHS_FT[groupOf(texture)];
  const feet = depthM / M_PER_FOOT;
  const tableFt =
    feet < 2.5 ? shallow * (feet / 2.5) ** 0.35 : shallow + (deep - shallow) * Math.min(1, (feet - 2.5) / 2.5);
  return tableFt * M_PER_FOOT * (flowLph / LITRES_PER_GALLON) ** 0.33;
}

interface SeasonDays {
  readonly first: number;
  readonly last: number;
}

/** Of all the season: of the longest time on which the same lines give water, the first of equally long ones. */
export function wettedShare(
  texture: string,
  planting: GardenPlanting,
  supply: GardenSupply,
  season: SeasonDays,
): number {
  const [longest] = watering(planting, supply, season).toSorted((one, other) => other.days.length - one.days.length);
  return longest === undefined ? 1 : shareOf(longest, texture, planting);
}

/**
 * Of each week: of the time that lies on most of its days, the first of those that lie on equally many. A week on which none lies is as the
 * one before, the first ones are as the first that has one.
 */
export function wettedSharesByWeek(
  texture: string,
  planting: GardenPlanting,
  supply: GardenSupply,
  season: SeasonDays,
): readonly number[] {
  const times = watering(planting, supply, season).map((time) => ({
    ...time,
    share: shareOf(time, texture, planting),
  }));
  const weeks = daysFrom(0, (season.last - season.first + 1) / 7 - 1);
  const own = weeks.map((week) => {
    const first = season.first + 7 * week;
    const lying = times.map(({ days, share }) => {
      return { share, count: days.filter((day) => first <= day && day <= first + 6).length };
    });
    const [most] = lying.filter(({ count }) => count > 0).toSorted((one, other) => other.count - one.count);
    return most?.share;
  });
  return weeks.map((week) => {
    return own.slice(0, week + 1).findLast((share) => share !== undefined) ?? times[0]?.share ?? 1;
  });
}

/** Times on which the same lines give water. */
function watering(planting: GardenPlanting, supply: GardenSupply, season: SeasonDays): readonly LaidTime[] {
  const days = daysFrom(Math.max(planting.from, season.first), Math.min(planting.to, season.last));
  const times = timesOf(days, (day) => flowsOn(planting, supply, day), planting, supply);
  return times.filter(({ flows }) => flows.some(({ flowLph }) => flowLph > 0));
}

/** In hundredths, no less than five. */
function shareOf({ flows }: LaidTime, texture: string, planting: GardenPlanting): number {
  const wetM2 = flows.reduce((sum, flow) => sum + wettedByM2(flow, texture, planting), 0);
  const hundredths = Math.floor((100 * wetM2) / planting.areaM2 + 0.5) / 100;
  return Math.max(0.05, Math.min(1, hundredths));
}

interface LaidTime {
  readonly name: string;
  readonly days: readonly number[];
  readonly flows: readonly LineFlow[];
}

/** Days in a row on which the same lines lie and the same pressure feeds them. */
function timesOf(
  days: readonly number[],
  flowsOf: (day: number) => readonly LineFlow[],
  planting: GardenPlanting,
  { sources }: GardenSupply,
): readonly LaidTime[] {
  const times: { readonly name: string; readonly days: number[]; readonly flows: readonly LineFlow[] }[] = [];
  for (const day of days) {
    const lying = planting.lines.map(({ from, to }) => from <= day && (to === undefined || day <= to));
    const name = `${lying} ${sources.filter(({ from }) => from <= day).at(-1)?.pressureKpa}`;
    const before = times.at(-1);
    if (before?.name === name) before.days.push(day);
    else times.push({ name, days: [day], flows: flowsOf(day) });
  }
  return times;
}

function wettedByM2({ line, flowLph }: LineFlow, texture: string, { areaM2, rootZone }: GardenPlanting): number {
  if (flowLph === 0) return 0;
  if (line.kind === 'spray') return areaM2;
  const acrossM = wettedWidthM(texture, rootZone.depthM, flowLph / line.emitters);
  const circlesM2 = (line.emitters * Math.PI * acrossM ** 2) / 4;
  return line.kind === 'dripline' ? Math.min((line.lengthM ?? Number.NaN) * acrossM, circlesM2) : circlesM2;
}
