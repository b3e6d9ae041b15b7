import type { GardenLine } from '../../engine/garden.ts';
import { feedOn, type InletPressure, lineDays } from '../../engine/line/zone-lines.ts';
import type { Season } from '../../engine/season/season.ts';
import type { NoticeSubject } from './notice.ts';
import { type PlantingSpan, placeOfSpans } from './planting-spans.ts';

/** Days of the season on which one line of a planting lies under one pressure. */
export interface LineSpan extends PlantingSpan {
  readonly line: GardenLine;
  /** Index in the planting's lines. */
  readonly index: number;
  readonly inlet: InletPressure;
}

/** Every line of the season that has an emitter, each with the spans in which it lies: none where it never does. */
export function lineSpans({ garden, zones }: Season): readonly (readonly LineSpan[])[] {
  const { span } = garden;
  const season = { first: span.firstDay, last: span.firstDay + 7 * span.weeks - 1 };
  const weekOf = (day: number) => Math.floor((day - season.first) / 7);
  return zones.flatMap((zone) =>
    zone.plantings.flatMap(({ planting }) =>
      planting.lines.map((line, index) => {
        const days = line.emitters > 0 ? lineDays(planting, index, season) : undefined;
        if (days === undefined) return [];
        const changes = planting.flows.map(({ from }) => from);
        const starts = [days.first, ...changes.filter((day) => day > days.first && day <= days.last)];
        return starts.map((start, change): LineSpan => {
          const end = (starts[change + 1] ?? days.last + 1) - 1;
          const inlet = feedOn(planting, start);
          return { zone, planting, line, index, inlet, firstWeek: weekOf(start), lastWeek: weekOf(end) };
        });
      }),
    ),
  );
}

/** Where a notice of some spans of one line, at least one, belongs, and when it holds. */
export function placeOfLine(
  spans: readonly LineSpan[],
): ReturnType<typeof placeOfSpans> & Required<Pick<NoticeSubject, 'lineIndex'>> {
  return { ...placeOfSpans(spans), lineIndex: (spans[0] as LineSpan).index };
}
