/** The supply as the engine sees it. */
import { type DayNumber, dayNumber } from '../../engine/calendar.ts';
import type { GardenSupply, SupplyCut, SupplyRestriction, SupplySource, SupplyTank } from '../../engine/garden.ts';
import { KPA_PER_METRE } from '../../engine/line/elevation.ts';
import { bucketTestFlowLpm } from '../../engine/supply/bucket-test.ts';
import type { UnitSystem } from '../../engine/units.ts';
import { DEFAULTS } from '../defaults.ts';
import type { PlanCut, PlanRestriction, PlanSupply } from '../schema/plan-schema.ts';
import { inSi, present } from './in-si.ts';
import { memoize } from './memoize.ts';
import { weekdayMask } from './weekday-masks.ts';

interface SupplyContext {
  readonly units: UnitSystem;
  readonly firstDay: DayNumber;
}

/** Nothing is known of the source: no limit is checked. */
const NO_SUPPLY: GardenSupply = {
  sources: [],
  windowWeekdays: DEFAULTS.windowWeekdays,
  windowHoursPerDay: DEFAULTS.windowHoursPerDay,
};

export function supplyOf(supply: PlanSupply | undefined, context: SupplyContext): GardenSupply {
  return supply === undefined ? NO_SUPPLY : gardenSupply(supply, context);
}

const gardenSupply = memoize(
  (supply: PlanSupply, { units, firstDay }: SupplyContext): GardenSupply =>
    present({
      sources: gardenSources(supply.sources, { units, firstDay }),
      windowWeekdays: supply.window?.weekdays ? weekdayMask(supply.window.weekdays) : DEFAULTS.windowWeekdays,
      windowHoursPerDay: supply.window?.hoursPerDay ?? DEFAULTS.windowHoursPerDay,
      restrictions: supply.restrictions && gardenRestrictions(supply.restrictions, NOTHING_ELSE),
      cuts: supply.cuts?.map((cut) => cutOf(cut, units)),
      windowOpensAtMinute: minuteOf(supply.window?.opensAt),
      allowanceLitresPerWeek: inSi(supply.allowance?.perWeek, 'volume', units),
      allowanceLitresPerSeason: inSi(supply.allowance?.perSeason, 'volume', units),
      tank: supply.tank && gardenTank(supply.tank, units),
    }),
);

/** Minutes after midnight of `05:00`. */
function minuteOf(time: string | undefined): number | undefined {
  if (time === undefined) return undefined;
  const [hours, minutes] = time.split(':').map(Number);
  return 60 * (hours ?? 0) + (minutes ?? 0);
}

const NOTHING_ELSE = {};

const gardenRestrictions = memoize((restrictions: readonly PlanRestriction[], _: typeof NOTHING_ELSE) =>
  restrictions.map(restrictionOf),
);

/** The same list while it is the same in the plan, whatever else of the supply has changed. */
const gardenSources = memoize((sources: PlanSupply['sources'], context: SupplyContext): GardenSupply['sources'] =>
  sources.map((source) => gardenSource(source, context)).sort((left, right) => left.from - right.from),
);

function gardenSource(
  { from, name, flow, pressure, waterHeight }: PlanSupply['sources'][number],
  { units, firstDay }: SupplyContext,
): SupplySource {
  const waterHeightM = inSi(waterHeight, 'waterHeight', units);
  return present({
    from: from === undefined ? firstDay : dayNumber(from),
    name,
    flowLpm: flow && sourceFlowLpm(flow, units),
    pressureKpa: inSi(pressure, 'pressure', units) ?? (waterHeightM && KPA_PER_METRE * waterHeightM),
    waterHeightM,
  });
}

/** As it was typed, or the part of what filled the bucket that is planned on. */
export function sourceFlowLpm(flow: NonNullable<PlanSupply['sources'][number]['flow']>, units: UnitSystem): number {
  if (flow.kind === 'typed') return inSi(flow.flow, 'supplyFlow', units);
  const measuredLpm = bucketTestFlowLpm({ volumeL: inSi(flow.volume, 'volume', units), seconds: flow.seconds });
  return (flow.share ?? DEFAULTS.bucketShare) * measuredLpm;
}

function restrictionOf({ name, from, to, weekdays, hoursPerDay }: PlanRestriction): SupplyRestriction {
  return present({
    name,
    from: from === undefined ? undefined : dayNumber(from),
    to: to === undefined ? undefined : dayNumber(to),
    weekdays: weekdayMask(weekdays),
    hoursPerDay,
  });
}

function cutOf({ from, to, share, perWeek }: PlanCut, units: UnitSystem): SupplyCut {
  const days = { from: dayNumber(from), to: dayNumber(to) };
  if (perWeek !== undefined) return { ...days, litresPerWeek: inSi(perWeek, 'volume', units) };
  return { ...days, share: share ?? 0 };
}

function gardenTank(tank: NonNullable<PlanSupply['tank']>, units: UnitSystem): SupplyTank {
  return {
    capacityLitres: inSi(tank.capacity, 'volume', units),
    startLitres: inSi(tank.start, 'volume', units),
    roofAreaM2: inSi(tank.roofArea, 'area', units) ?? DEFAULTS.roofAreaM2,
    runoffCoefficient: tank.runoffCoefficient ?? DEFAULTS.runoffCoefficient,
  };
}
