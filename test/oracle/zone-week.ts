/** A zone's week: its plantings added up. */
import type { GardenZone } from '../../src/engine/garden.ts';
import type { MinutesOrigin, State, ZONE_FIELDS } from '../../src/engine/season/season.ts';
import type { PlantingFigures, Volumes } from './week.ts';
import { wateringDayCount, type ZoneMinutes } from './zone-minutes.ts';

type Figures = Record<Exclude<keyof typeof ZONE_FIELDS, 'state' | 'origin'>, number>;
export type ZoneFigures = Figures & { readonly state: State; readonly origin: MinutesOrigin };

const WORST_FIRST: readonly State[] = ['dry', 'short', 'over', 'met'];

/** `plantings` in the zone's order. */
export function zoneWeekFigures(
  zone: GardenZone,
  minutes: ZoneMinutes,
  plantings: readonly PlantingFigures[],
): ZoneFigures {
  const sum = (figure: (planting: PlantingFigures, areaM2: number) => number) =>
    plantings.reduce((total, planting, place) => total + figure(planting, zone.plantings[place]?.areaM2 ?? 0), 0);
  const groundM2 = sum(({ groundDays }, areaM2) => (groundDays > 0 ? areaM2 : 0));
  const rainStayedLitres = sum((planting) => planting.rainStayedLitres);
  const rainCreditLitres = rainStayedLitres / zone.efficiency;
  const flowOfAllLpm = sum(({ flowLpm }) => flowLpm);
  return {
    ...volumes(sum),
    minutes: minutes.perDay * wateringDayCount(zone.wateringDays),
    minutesPerDay: minutes.perDay,
    cycles: minutes.cycles,
    rainCreditMm: groundM2 > 0 ? rainStayedLitres / groundM2 : 0,
    rainCreditLitres,
    rainCreditMinutes: flowOfAllLpm > 0 ? rainCreditLitres / flowOfAllLpm : 0,
    flowLpm: sum(({ flowLpm, openMask }) => (openMask === 0 ? 0 : flowLpm)),
    minutesWanted: minutes.wanted,
    state: stateOf(minutes.origin, plantings),
    origin: minutes.origin,
  };
}

function volumes(sum: (figure: (planting: PlantingFigures) => number) => number): Volumes {
  return {
    litres: sum((planting) => planting.litres),
    rainLitres: sum((planting) => planting.rainLitres),
    demandLitres: sum((planting) => planting.demandLitres),
    usedLitres: sum((planting) => planting.usedLitres),
    rainStayedLitres: sum((planting) => planting.rainStayedLitres),
    irrigationStayedLitres: sum((planting) => planting.irrigationStayedLitres),
    drainedLitres: sum((planting) => planting.drainedLitres),
    lostLitres: sum((planting) => planting.lostLitres),
    storageLitres: sum((planting) => planting.storageLitres),
    neededLitres: sum((planting) => planting.neededLitres),
  };
}

function stateOf(origin: MinutesOrigin, plantings: readonly PlantingFigures[]): State {
  const inGround = plantings.filter(({ groundDays }) => groundDays > 0);
  if (inGround.length === 0) return 'off';
  if (origin === 'closed') return 'closed';
  return WORST_FIRST.find((state) => inGround.some((planting) => planting.state === state)) ?? 'met';
}
