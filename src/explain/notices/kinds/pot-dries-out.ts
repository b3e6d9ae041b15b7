import { daysOfMask } from '../../../engine/season/days-mask.ts';
import { type PlantingSeason, type Season, ZONE_FIELDS as Z, type ZoneSeason } from '../../../engine/season/season.ts';
import { heldMask } from '../../../engine/season/week-masks.ts';
import { eachPlanting, placeOf } from '../each-planting.ts';
import type { FoundNotice } from '../notice.ts';
import { oneRunOf, weeksWhere } from '../runs.ts';

const ROUNDING_MM = 1e-9;

/** Containers whose readily available water does not last from one watering to the next, as the normals let expect: one notice each. */
export function potDriesOut(season: Season): readonly FoundNotice<'pot-dries-out'>[] {
  return eachPlanting(season, (zone, own) => {
    const { container, areaM2 } = own.planting;
    if (container === undefined) return [];
    const lacking = (week: number) => longestWait(zone, own, week);
    return oneRunOf(weeksWhere(own.weeks, (week) => isTooLong(lacking(week)))).map(
      (run): FoundNotice<'pot-dries-out'> => {
        const worst = run.weeks.map(lacking).reduce((most, each) => (lackMm(each) > lackMm(most) ? each : most));
        const litres = (mm: number) => (mm * areaM2) / container.count;
        return {
          kind: 'pot-dries-out',
          ...placeOf(zone, own),
          ...run,
          figures: {
            heldLitres: litres(worst.heldMm),
            usedLitres: litres(worst.usedMm),
            hours: worst.hours,
            runsADay: worst.runsADay,
            wateringDays: worst.wateringDays,
          },
        };
      },
    );
  });
}

/** From the last run of a watering day to the next run, mm over its ground. */
interface Wait {
  readonly heldMm: number;
  readonly usedMm: number;
  readonly hours: number;
  readonly runsADay: number;
  readonly wateringDays: number;
}

const NONE: Wait = { heldMm: 0, usedMm: 0, hours: 0, runsADay: 0, wateringDays: 0 };

const lackMm = ({ heldMm, usedMm }: Wait) => usedMm - heldMm;
const isTooLong = (wait: Wait) => lackMm(wait) > ROUNDING_MM;

/** That of the week's watering days after which most is missing. */
function longestWait({ zone, figures }: ZoneSeason, { demand }: PlantingSeason, week: number): Wait {
  const runsADay = figures.at(Z.runsADay, week);
  const days = daysOfMask(heldMask(zone, week));
  if (runsADay === 0 || days.length === 0) return NONE;
  const waits = days.map((offset, at): Wait => {
    const next = days[at + 1] ?? (days[0] as number) + 7;
    const day = 7 * week + offset;
    const isThere = (each: number) => each >= demand.first && each < demand.end && !demand.rest?.[each];
    if (!isThere(day)) return NONE;
    let usedMm = (demand.expectedEtcMm[day] as number) / runsADay;
    for (let later = day + 1; later < 7 * week + next && isThere(later); later++) {
      usedMm += demand.expectedEtcMm[later] as number;
    }
    const hours = DAY_HOURS / runsADay + DAY_HOURS * (next - offset - 1);
    return { heldMm: demand.expectedRawMm[day] as number, usedMm, hours, runsADay, wateringDays: days.length };
  });
  return waits.reduce((most, each) => (lackMm(each) > lackMm(most) ? each : most));
}

const DAY_HOURS = 24;
