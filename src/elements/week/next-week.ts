/** What closing a week changes in the next one. */
import type { Season, ZoneSeason } from '../../engine/season/season.ts';
import { runMask, zoneFigure } from '../../engine/season/zone-week.ts';
import { computeSeason } from '../../plan/compute-season.ts';
import { tryEdit } from '../../plan/edits/apply-edit.ts';
import type { Plan } from '../../plan/schema/plan-schema.ts';
import { closingEdit } from './week-edits.ts';
import type { WeekContext } from './week-model.ts';

/** Of one zone: the minutes of its longest day, and on how many days it runs. */
export interface NextChange {
  readonly zone: string;
  readonly minutes: { readonly before: number; readonly after: number };
  readonly days: { readonly before: number; readonly after: number };
}

const closed = new WeakMap<Plan, Season>();

/** The season as it will be once the week is closed as it stands. */
function seasonAfter(context: WeekContext): Season {
  const { plan, season } = context.view;
  const known = closed.get(plan);
  if (known !== undefined) return known;
  const edit = closingEdit(context);
  const result = edit === undefined ? undefined : tryEdit(plan, edit);
  const after = result?.ok ? computeSeason(result.plan, season) : season;
  closed.set(plan, after);
  return after;
}

/** The greatest change first; undefined where the season ends with the week. `before`: the season when the closing began. */
export function nextChanges(before: Season, context: WeekContext): readonly NextChange[] | undefined {
  const next = context.week + 1;
  const after = seasonAfter(context);
  if (next >= after.garden.span.weeks) return undefined;
  const earlier = new Map(before.zones.map((zone) => [zone.zone.id, zone]));
  const changes = after.zones.flatMap((zone) => {
    const was = earlier.get(zone.zone.id);
    return was === undefined || isAlike(was, zone, next) ? [] : [{ was, zone }];
  });
  const weight = ({ was, zone }: (typeof changes)[number]) =>
    Math.abs(zoneFigure(zone, 'minutes', next) - zoneFigure(was, 'minutes', next));
  return changes
    .sort((one, other) => weight(other) - weight(one))
    .map(({ was, zone }) => ({
      zone: zone.zone.name,
      minutes: { before: zoneFigure(was, 'minutesPerDay', next), after: zoneFigure(zone, 'minutesPerDay', next) },
      days: { before: count(runMask(was, next)), after: count(runMask(zone, next)) },
    }));
}

function isAlike(one: ZoneSeason, other: ZoneSeason, week: number): boolean {
  return (
    zoneFigure(one, 'minutesPerDay', week) === zoneFigure(other, 'minutesPerDay', week) &&
    count(runMask(one, week)) === count(runMask(other, week))
  );
}

function count(mask: number): number {
  return [0, 1, 2, 3, 4, 5, 6].filter((day) => (mask >> day) & 1).length;
}
