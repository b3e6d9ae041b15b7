/** The lines of a zone that lie in the weeks of a notice. */
import { weekFirstDay } from '../../plan/season-weeks.ts';
import type { LaidPlanting, MixContext } from '../mix/mix-context.ts';
import type { NoticeInPlan } from './remedy.ts';

/** Those first, and then the ones that could still be changed; all of these where it names no weeks. */
export function laidInWeeks({ plan, notice }: NoticeInPlan, { zone, laid }: MixContext): readonly LaidPlanting[] {
  const { firstWeek, lastWeek } = notice;
  if (firstWeek === undefined || lastWeek === undefined) return laid;
  const first = weekFirstDay(plan.season, firstWeek);
  const end = weekFirstDay(plan.season, lastWeek + 1);
  const there = zone.plantings.flatMap((planting) =>
    planting.lines
      .map((line, index): LaidPlanting => ({ planting, line, index }))
      .filter(({ line: { from = '', to = end } }) => from < end && to >= first),
  );
  const isThere = (one: LaidPlanting) =>
    there.some(({ planting, index }) => planting === one.planting && index === one.index);
  return [...there, ...laid.filter((one) => !isThere(one))];
}
