/** One planting: its need, its ground, its days and its lines. */

import { defaultEfficiency } from '../../engine/application/efficiency.ts';
import { type DayNumber, dayNumber } from '../../engine/calendar.ts';
import type { GardenPlanting, RootZone, SupplySource, ZoneSoil } from '../../engine/garden.ts';
import { plantingFlows } from '../../engine/line/planting-flows.ts';
import { flowsByWeek, shareOfFlow, type WettedGround, wettedShare } from '../../engine/line/wetted-share.ts';
import { letsRainThrough, type Mulch } from '../../engine/plants/mulch.ts';
import { readilyAvailableWaterMm, totalAvailableWaterMm } from '../../engine/soil/available-water.ts';
import { toSi, type UnitSystem } from '../../engine/units.ts';
import { DEFAULTS } from '../defaults.ts';
import type { PlanPlanting } from '../schema/plan-schema.ts';
import { cropCoefficientOf, landscapeCoefficientOf, mulchedCrop, mulchedLandscape } from './coefficient.ts';
import { containerOf, containerRoots, mixDepthM, rainFactorOf } from './container.ts';
import type { Efficiency } from './efficiency.ts';
import { groundDays } from './ground-days.ts';
import { inSi } from './in-si.ts';
import { linesOf } from './line.ts';
import { memoizeByContext, memoizeFew } from './memoize.ts';
import { restOf } from './rest.ts';
import { rootZoneOf } from './root-zone.ts';

export interface PlantingContext {
  readonly units: UnitSystem;
  readonly seasonFirst: DayNumber;
  readonly seasonLast: DayNumber;
  /** One list for as long as they say the same. */
  readonly pressures: SourcePressures;
  /** Of the zone, for all its lines; left out: each has its own or the usual. */
  readonly zoneWide?: Efficiency | undefined;
  /** Months whose ground is frozen, bit 0 = January. */
  readonly frozenMonths: number;
  readonly leachingFraction?: number | undefined;
  /** Of the zone. */
  readonly soil: Pick<ZoneSoil, 'texture' | 'availableWater'>;
}

/** In order of `from`. */
export type SourcePressures = readonly Pick<SupplySource, 'from' | 'pressureKpa'>[];

export const plantingOf = memoizeByContext((planting: PlanPlanting, context: PlantingContext): GardenPlanting => {
  const { need, establishing, rootDepth, allowedDepletion, target, startDepletion, ...others } = planting;
  const { id, name, extent: _extent, watering, inGround, shutOff, lines, note, assumed: _assumed, ...ground } = others;
  const { container, wettedShare: typedShare, mulch, leaflessMonths, dryDownDays, soak, ...unread } = ground;
  // A field that nobody reads is named here by the compiler.
  unread satisfies Readonly<Record<string, never>>;
  const { units, seasonFirst, seasonLast, pressures, zoneWide, frozenMonths, leachingFraction, soil } = context;
  const stay = groundDays(planting, { first: seasonFirst, last: seasonLast });
  const extent = extentOf(planting.extent, units);
  const laid = linesOf(planting.lines, { units, firstDay: stay.from, ...extent, ...zoneWide });
  const { areaM2, plants } = extent;
  const inSeason = { from: Math.max(stay.from, seasonFirst), to: Math.min(stay.to, seasonLast) };
  const flowGround = { ...inSeason, areaM2, plants, lines: laid };
  const flows = plantingFlows(flowGround, { sources: pressures, efficiency: USUAL_EFFICIENCY });
  const pots = container && containerOf(container, { units, plants });
  const isSoaked = soak === true;
  const given = { rootDepth, allowedDepletion, target, startDepletion: isSoaked ? 0 : startDepletion };
  const roots =
    container && pots ? containerRoots(container, given, mixDepthM(pots, areaM2)) : rootZone(need, { ...given, units });
  const covering = mulchOf(mulch);
  return {
    id: planting.id,
    name: planting.name,
    coefficient: coefficientOf(planting, covering),
    establishing: establishing && { until: dayNumber(establishing.until), factor: establishing.factor },
    areaM2,
    plants,
    rootZone: roots,
    container: pots,
    isShareTyped: pots === undefined && typedShare !== undefined ? true : undefined,
    rainFactor: letsRainThrough(covering) ? pots && rainFactorOf(pots, areaM2) : 0,
    mulch: covering,
    leachingFraction: leachingFraction || undefined,
    rest: restOf(planting, { ...inSeason, lastDay: stay.to, frozenMonths }),
    soakLitres: isSoaked ? soakMm(startDepletion, roots, soil) * areaM2 : undefined,
    watering: planting.watering ?? usualWatering(planting),
    from: stay.from,
    to: stay.to,
    hasShutOff: planting.shutOff ?? false,
    lines: laid,
    // All plantings are objects of one shape: those of many are slow to read.
    ...(pots ? { ...NO_SHARES, flows } : sharesOf({ areaM2, lines: laid, flows }, { roots, typedShare }, context)),
  };
});

type WettedShares = Pick<GardenPlanting, 'wettedShare' | 'wettedShareByWeek' | 'flows'>;

const NO_SHARES = { wettedShare: undefined, wettedShareByWeek: undefined };

/** Where nobody types it: of the flows of each week. */
function sharesOf(
  ground: Omit<WettedGround, 'rootDepthM' | 'texture'>,
  { roots, typedShare }: { readonly roots: RootZone; readonly typedShare: number | undefined },
  { soil: { texture }, seasonFirst, seasonLast }: PlantingContext,
): WettedShares {
  if (typedShare !== undefined) return { ...NO_SHARES, wettedShare: typedShare, flows: ground.flows };
  const wetting = { ...ground, rootDepthM: roots.depthM, texture };
  const flows = ground.flows.map((flow) => ({ ...flow, wettedShare: shareOfFlow(wetting, flow) }));
  const byWeek = flowsByWeek(flows, seasonFirst, (seasonLast + 1 - seasonFirst) / 7).map(
    (flow) => flow?.wettedShare ?? 1,
  );
  const isOne = byWeek.every((share) => share === byWeek[0]);
  const share = (isOne ? byWeek[0] : undefined) ?? wettedShare(wetting);
  const isSame = flows.every((flow) => flow.flowLph === 0 || flow.wettedShare === share);
  return {
    wettedShare: share < 1 ? share : undefined,
    wettedShareByWeek: isOne ? undefined : byWeek,
    flows: isSame ? ground.flows : flows,
  };
}

/** What is missing on the first day before the soak, as a net depth, mm. */
function soakMm(
  startDepletion: number = DEFAULTS.startDepletion,
  { availableWater, allowedDepletion, depthM }: RootZone,
  soil: PlantingContext['soil'],
): number {
  const tawMm = totalAvailableWaterMm(availableWater ?? soil.availableWater, depthM);
  return startDepletion * readilyAvailableWaterMm(tawMm, allowedDepletion);
}

function mulchOf(mulch: PlanPlanting['mulch']): Mulch | undefined {
  return mulch?.kind === 'organic' ? { kind: 'organic', cover: mulch.cover ?? DEFAULTS.mulchCover } : mulch;
}

/** Every line of a plan has its own. */
const USUAL_EFFICIENCY = defaultEfficiency('drip');

function coefficientOf({ need, inGround }: PlanPlanting, mulch: Mulch | undefined): GardenPlanting['coefficient'] {
  if (need.kind !== 'crop') return mulchedLandscape(landscapeCoefficient(need, NOTHING_ELSE), mulch);
  const pulledOn = inGround?.to === undefined ? undefined : dayNumber(inGround.to);
  return mulchedCrop(cropCoefficient(need, { pulledOn }), mulch, need.crop);
}

const NOTHING_ELSE = {};
const landscapeCoefficient = memoizeFew(landscapeCoefficientOf);
const rootZone = memoizeFew(rootZoneOf);
const cropCoefficient = memoizeFew(
  (need: Parameters<typeof cropCoefficientOf>[0], { pulledOn }: { readonly pulledOn: DayNumber | undefined }) =>
    cropCoefficientOf(need, pulledOn),
);

/** Vegetables and pots keep; shrubs and the like behind a shut-off are refilled (design of this kit, after common practice). */
function usualWatering({ need, shutOff, container }: PlanPlanting): 'keep' | 'refill' {
  return need.kind !== 'crop' && shutOff && !container ? 'refill' : 'keep';
}

/** Ground as seen from above. Where an area is given, one round plant of that area stands for it. */
export function extentOf(extent: PlanPlanting['extent'], units: UnitSystem) {
  if (extent.kind === 'area') {
    const areaM2 = toSi(extent.area, 'area', units);
    return { areaM2, plants: undefined, canopyDiameterM: 2 * Math.sqrt(areaM2 / Math.PI) };
  }
  if (extent.kind !== 'canopy') {
    const areaM2 = toSi(extent.length, 'length', units) * acrossM(extent, units);
    return { areaM2, plants: undefined, canopyDiameterM: 2 * Math.sqrt(areaM2 / Math.PI) };
  }
  const canopyDiameterM = toSi(extent.diameter, 'diameter', units);
  const groundDiameterM = Math.max(
    canopyDiameterM,
    DEFAULTS.groundPerTrunk * (inSi(extent.trunk, 'diameter', units) ?? 0),
  );
  return { areaM2: (extent.count * Math.PI * groundDiameterM ** 2) / 4, plants: extent.count, canopyDiameterM };
}

/** A bed's width; rows take up what lies between them, half of it on either side of the outer ones. */
function acrossM(extent: Extract<PlanPlanting['extent'], { kind: 'bed' | 'rows' }>, units: UnitSystem): number {
  if (extent.kind === 'bed') return toSi(extent.width, 'length', units);
  return extent.rows * (inSi(extent.apart, 'spacing', units) ?? DEFAULTS.rowsApartM);
}
