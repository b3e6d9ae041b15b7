import { applicationRateMmPerHour } from '../application/application-rate.ts';
import { ZONE_FIELDS as Z, type ZoneSeason } from '../season/season.ts';
import { cyclesOf } from '../season/zone-sum.ts';
import { minutesOnDay } from '../season/zone-week.ts';
import { soakPauseMinutes } from '../soil/cycle-and-soak.ts';
import { surfaceStorage } from '../soil/surface-storage.ts';
import type { ZoneCycles } from './watering-window.ts';

/** What a zone runs on a day of the season (0 = its first): its cycles, and the pause that its soil needs between them. */
export function zoneCycles(zone: ZoneSeason, day: number): ZoneCycles {
  const minutes = minutesOnDay(zone, day);
  const { figures, weeks } = zone;
  const cycles = cyclesOf(zone.zone, minutes, figures[Z.origin * weeks + Math.floor(day / 7)] as number);
  const minutesPerCycle = cycles > 0 ? minutes / cycles : 0;
  return {
    id: zone.zone.id,
    minutesPerCycle,
    cycles,
    soakMinutes: cycles > 1 ? soakMinutes(zone, minutesPerCycle) : 0,
  };
}

/** By the line that lays on water the fastest, as the longest cycle is. */
function soakMinutes({ zone, plantings }: ZoneSeason, minutesPerCycle: number): number {
  const rates = plantings.flatMap(({ planting }) =>
    planting.lines.map(({ flowLph }) => applicationRateMmPerHour(flowLph, planting.areaM2)),
  );
  const { texture, slopePercent } = zone.soil;
  return soakPauseMinutes({
    minutesPerCycle,
    applicationRateMmPerHour: Math.max(0, ...rates),
    intakeRateMmPerHour: surfaceStorage(texture, slopePercent).basicIntakeMmPerHour,
  });
}
