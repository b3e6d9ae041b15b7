/** Lines of a document of version 1, where each ended the one before it, with the last days that they had. */
import { type DayNumber, isoDate } from '../../engine/calendar.ts';
import { isAnnualCrop } from '../../engine/plants/find-crop.ts';
import { dayIn, fieldsIn, type Loose, listIn } from '../reading/loose.ts';
import { isDrip } from './water-changes.ts';

export interface LinesEnded {
  /** The same object where no line was ended. */
  readonly document: Loose;
  /** How many were. */
  readonly lines: number;
  /** Plantings of those lines with emitters that may wet a part of their ground: another share before than after. */
  readonly wettedAnew: number;
}

/** A line without a day lies from its planting's first in the ground. */
export function withLinesEnded(document: Loose): LinesEnded {
  let lines = 0;
  let wettedAnew = 0;
  const seasonFirst = dayIn(fieldsIn(document['season'])['firstDay']);
  const ended = (planting: unknown): unknown => {
    const all = listIn(fieldsIn(planting)['lines']);
    const first = firstDayOf(fieldsIn(planting)) ?? seasonFirst;
    const days = all.map((line) => dayIn(fieldsIn(line)['from']) ?? first);
    const next = days.map((day) => earliestAfter(days, day));
    if (next.every((day) => day === undefined)) return planting;
    if (all.map(fieldsIn).some(isDrip)) wettedAnew++;
    return {
      ...fieldsIn(planting),
      lines: all.map((line, index) => {
        const day = next[index];
        if (day === undefined) return line;
        lines++;
        return { ...fieldsIn(line), to: isoDate(day - 1) };
      }),
    };
  };
  const zones = listIn(document['zones']).map((zone) => {
    const plantings = listIn(fieldsIn(zone)['plantings']);
    const after = plantings.map(ended);
    return after.every((planting, index) => planting === plantings[index])
      ? zone
      : { ...fieldsIn(zone), plantings: after };
  });
  return { document: lines === 0 ? document : { ...document, zones }, lines, wettedAnew };
}

function earliestAfter(days: readonly (DayNumber | undefined)[], day: DayNumber | undefined): DayNumber | undefined {
  const later = days.filter((other): other is DayNumber => other !== undefined && day !== undefined && other > day);
  return later.length === 0 ? undefined : Math.min(...later);
}

/** As the plan names it, else the planting day of an annual crop. */
function firstDayOf({ inGround, need }: Loose): DayNumber | undefined {
  const { kind, crop, plantedOn } = fieldsIn(need);
  const isAnnual = kind === 'crop' && isAnnualCrop(crop);
  return dayIn(fieldsIn(inGround)['from']) ?? (isAnnual ? dayIn(plantedOn) : undefined);
}
