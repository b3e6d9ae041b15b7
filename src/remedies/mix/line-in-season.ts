/** The line that a remedy would change. */
import type { PlanLine, PlanPlanting } from '../../plan/schema/plan-schema.ts';

export interface LineInSeason {
  readonly line: PlanLine;
  /** In the planting's list of lines. */
  readonly index: number;
}

/** The last line that lies in the season: the one that somebody could still change. `lastDay` is the season's. */
export function lineInSeason({ lines }: PlanPlanting, lastDay: string): LineInSeason | undefined {
  let found: LineInSeason | undefined;
  lines.forEach((line, index) => {
    if ((line.from ?? '') <= lastDay && (line.from ?? '') >= (found?.line.from ?? '')) found = { line, index };
  });
  return found;
}
