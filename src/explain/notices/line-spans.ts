import type { GardenLine, GardenPlanting } from '../../engine/garden.ts';
import { lineDays } from '../../engine/line/zone-lines.ts';
import type { Season, ZoneSeason } from '../../engine/season/season.ts';
import { type InletPressure, inletPressureOn } from '../../engine/supply/source-on.ts';
import type { NoticeSubject } from './notice.ts';

/** Days of the season on which one line of a planting lies and one source feeds it. */
export interface LineSpan {
  readonly zone: ZoneSeason;
  readonly planting: GardenPlanting;
  readonly line: GardenLine;
  /** Index in the planting's lines. */
  readonly index: number;
  readonly inlet: InletPressure;
  /** Weeks of the season that hold the first and the last of the days. */
  readonly firstWeek: number;
  readonly lastWeek: number;
}

/** Every line of the season that has an emitter, each with the spans in which it lies: none where it never does. */
export function lineSpans({ garden, zones }: Season): readonly (readonly LineSpan[])[] {
  const { span, supply } = garden;
  const season = { first: span.firstDay, last: span.firstDay + 7 * span.weeks - 1 };
  const changes = supply.sources.map(({ from }) => from);
  const weekOf = (day: number) => Math.floor((day - season.first) / 7);
  return zones.flatMap((zone) =>
    zone.plantings.flatMap(({ planting }) =>
      planting.lines.map((line, index) => {
        const days = line.emitters > 0 ? lineDays(planting, index, season) : undefined;
        if (days === undefined) return [];
        const starts = [days.first, ...changes.filter((day) => day > days.first && day <= days.last)];
        return starts.map((start, change): LineSpan => {
          const end = (starts[change + 1] ?? days.last + 1) - 1;
          const inlet = inletPressureOn(supply, start);
          return { zone, planting, line, index, inlet, firstWeek: weekOf(start), lastWeek: weekOf(end) };
        });
      }),
    ),
  );
}

/** Where a notice of some spans of one line, at least one, belongs, and when it holds. */
export function placeOfLine(
  spans: readonly LineSpan[],
): Required<Pick<NoticeSubject, 'zoneId' | 'plantingId' | 'lineIndex' | 'firstWeek' | 'lastWeek' | 'weeks'>> {
  const weeks = [...new Set(spans.flatMap(weeksOf))].sort((left, right) => left - right);
  const span = spans[0] as LineSpan;
  return {
    zoneId: span.zone.zone.id,
    plantingId: span.planting.id,
    lineIndex: span.index,
    firstWeek: weeks[0] as number,
    lastWeek: weeks.at(-1) as number,
    weeks,
  };
}

function weeksOf({ firstWeek, lastWeek }: LineSpan): readonly number[] {
  return Array.from({ length: lastWeek - firstWeek + 1 }, (_, offset) => firstWeek + offset);
}
