/** The supply as the engine sees it. */
import { type DayNumber, dayNumber } from '../../engine/calendar.ts';
import type { GardenSupply, SupplySource, SupplyTank } from '../../engine/garden.ts';
import type { UnitSystem } from '../../engine/units.ts';
import { DEFAULTS } from '../defaults.ts';
import type { PlanSupply } from '../schema/plan-schema.ts';
import { inSi, present } from './in-si.ts';
import { kept } from './kept.ts';
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

const gardenSupply = kept(
  (supply: PlanSupply, { units, firstDay }: SupplyContext): GardenSupply =>
    present({
      sources: gardenSources(supply.sources, { units, firstDay }),
      windowWeekdays: supply.window?.weekdays ? weekdayMask(supply.window.weekdays) : DEFAULTS.windowWeekdays,
      windowHoursPerDay: supply.window?.hoursPerDay ?? DEFAULTS.windowHoursPerDay,
      allowanceLitresPerWeek: inSi(supply.allowance?.perWeek, 'volume', units),
      allowanceLitresPerSeason: inSi(supply.allowance?.perSeason, 'volume', units),
      tank: supply.tank && gardenTank(supply.tank, units),
    }),
);

/** The same list while it is the same in the plan, whatever else of the supply has changed. */
const gardenSources = kept((sources: PlanSupply['sources'], context: SupplyContext): GardenSupply['sources'] =>
  sources.map((source) => gardenSource(source, context)).sort((left, right) => left.from - right.from),
);

function gardenSource(
  { from, name, flow, pressure }: PlanSupply['sources'][number],
  { units, firstDay }: SupplyContext,
): SupplySource {
  return present({
    from: from === undefined ? firstDay : dayNumber(from),
    name,
    flowLpm: flow && flowLpm(flow, units),
    pressureKpa: inSi(pressure, 'pressure', units),
  });
}

function flowLpm(flow: NonNullable<PlanSupply['sources'][number]['flow']>, units: UnitSystem): number {
  if (flow.kind === 'typed') return inSi(flow.flow, 'supplyFlow', units);
  return (inSi(flow.volume, 'volume', units) * 60) / flow.seconds;
}

function gardenTank(tank: NonNullable<PlanSupply['tank']>, units: UnitSystem): SupplyTank {
  return {
    capacityLitres: inSi(tank.capacity, 'volume', units),
    startLitres: inSi(tank.start, 'volume', units),
    roofAreaM2: inSi(tank.roofArea, 'area', units) ?? DEFAULTS.roofAreaM2,
    runoffCoefficient: tank.runoffCoefficient ?? DEFAULTS.runoffCoefficient,
  };
}
