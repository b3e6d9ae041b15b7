/** A planting's week or whole season, as its cell shows it. */
import { plantingFigure } from '../../engine/season/planting-week.ts';
import type { PlantingSeason, ZoneSeason } from '../../engine/season/season.ts';
import { zoneFigure } from '../../engine/season/zone-week.ts';

export interface PlantingTotal {
  readonly litres: number;
  /** Minutes for which its line ran. */
  readonly minutes: number;
  /** Rain that its roots kept, mm. */
  readonly rainMm: number;
  readonly neededLitres: number;
  /** Net irrigation as a share of the need; undefined where nothing to speak of is needed. */
  readonly metShare: number | undefined;
}

/** Needs below this round to nothing in any unit; a ratio to them would say nothing. */
const LEAST_NEED_MM = 0.05;

export function plantingWeek(zone: ZoneSeason, member: PlantingSeason, week: number): PlantingTotal {
  return sumOf(zone, member, week, week + 1);
}

export function plantingTotal(zone: ZoneSeason, member: PlantingSeason): PlantingTotal {
  return sumOf(zone, member, 0, member.weeks);
}

function sumOf(zone: ZoneSeason, member: PlantingSeason, first: number, end: number): PlantingTotal {
  const sum = { litres: 0, minutes: 0, rainMm: 0, neededLitres: 0, neededMm: 0, netMm: 0 };
  for (let week = first; week < end; week++) {
    const at = (field: Parameters<typeof plantingFigure>[1]) => plantingFigure(member, field, week);
    sum.litres += at('litres');
    sum.minutes += zoneFigure(zone, 'minutesPerDay', week) * at('openDays');
    sum.rainMm += at('rainSoakedMm') - at('rainDrainedMm');
    sum.neededLitres += at('neededLitres');
    sum.neededMm += at('neededMm');
    sum.netMm += at('irrigationNetMm');
  }
  const { litres, minutes, rainMm, neededLitres, neededMm, netMm } = sum;
  return { litres, minutes, rainMm, neededLitres, metShare: neededMm < LEAST_NEED_MM ? undefined : netMm / neededMm };
}
