import { plantingLine } from '../../engine/line/zone-lines.ts';
import type { Season } from '../../engine/season/season.ts';
import { lineSpans } from '../../explain/notices/line-spans.ts';
import type { Notice } from '../../explain/notices/notice.ts';

/** Pressure at the weakest emitter of a notice's line over a season, kPa; undefined where it has no such line. */
export function weakestEmitterKpa(season: Season, { plantingId, lineIndex }: Notice): number | undefined {
  const spans = lineSpans(season).flat();
  const own = spans.filter(({ planting, index }) => planting.id === plantingId && index === lineIndex);
  const lines = own.flatMap(({ planting, index, inlet }) => plantingLine(planting, index, inlet) ?? []);
  return lines.length === 0 ? undefined : Math.min(...lines.map(({ profile }) => profile.leastPressureKpa));
}
