import { fastestRateMmPerHour } from '../application/fastest-rate.ts';
import type { ZoneSeason } from '../season/season.ts';
import { timerOf } from '../season/week-timer.ts';
import { cyclesOf } from '../season/zone-sum.ts';
import { minutesOnDay } from '../season/zone-week.ts';
import { soakPauseMinutes } from '../soil/cycle-and-soak.ts';
import { surfaceStorage } from '../soil/surface-storage.ts';
import type { ZoneCycles } from './watering-window.ts';

/** What a zone runs on a day of the season (0 = its first): its cycles, and the pause that its soil needs between them. */
export function zoneCycles(zone: ZoneSeason, day: number): ZoneCycles {
  const minutes = minutesOnDay(zone, day);
  const cycles = cyclesOf(timerOf(zone, Math.floor(day / 7)), minutes);
  const minutesPerCycle = cycles > 0 ? minutes / cycles : 0;
  return {
    id: zone.zone.id,
    minutesPerCycle,
    cycles,
    soakMinutes: cycles > 1 ? soakMinutes(zone, minutesPerCycle) : 0,
  };
}

function soakMinutes({ zone }: ZoneSeason, minutesPerCycle: number): number {
  const { texture, slopePercent } = zone.soil;
  return soakPauseMinutes({
    minutesPerCycle,
    applicationRateMmPerHour: fastestRateMmPerHour(zone.plantings),
    intakeRateMmPerHour: surfaceStorage(texture, slopePercent).basicIntakeMmPerHour,
  });
}
