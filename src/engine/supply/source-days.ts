import type { Garden } from '../garden.ts';
import { sourceOn } from './source-on.ts';

/** What the source of each day of the season gives; NaN where it is not known. */
export interface SourceDays {
  readonly flowLpm: Float64Array;
  readonly pressureKpa: Float64Array;
  /** Index in the supply's sources of the one that serves, -1 where none has begun. */
  readonly index: Int16Array;
}

export function sourceDays({ span, supply }: Pick<Garden, 'span' | 'supply'>): SourceDays {
  const days = 7 * span.weeks;
  const daily = { flowLpm: new Float64Array(days), pressureKpa: new Float64Array(days), index: new Int16Array(days) };
  for (let day = 0; day < days; day += 1) {
    const source = sourceOn(supply, span.firstDay + day);
    daily.flowLpm[day] = source?.flowLpm ?? Number.NaN;
    daily.pressureKpa[day] = source?.pressureKpa ?? Number.NaN;
    daily.index[day] = source === undefined ? -1 : supply.sources.indexOf(source);
  }
  return daily;
}
