/** Plantings shut off in the weeks in which their water drains, and open as they were in all others. */
import { PLANTING_FIELDS as P, type PlantingSeason, STATES } from '../../engine/season/season.ts';
import { weeksWhere } from '../../explain/notices/runs.ts';
import { wastedMm } from '../../explain/notices/waste.ts';
import { computeSeason } from '../../plan/compute-season.ts';
import { tryEdit } from '../../plan/edits/apply-edit.ts';
import type { Edit } from '../../plan/edits/edit.ts';
import type { PlanSeason } from '../../plan/schema/plan-schema.ts';
import { weekFirstDay } from '../../plan/season-weeks.ts';
import { plantingsById } from './plantings-by-id.ts';
import type { NoticeInPlan, RemedyCandidate } from './remedy.ts';

/** What is spared in one week may drain in another: so many times the weeks are looked through. */
const MOST_ROUNDS = 4;

/** As many of its zone's watering days as there are. */
const EVERY_DAY = 7;

const OVER = STATES.indexOf('over');

/** A shut-off is put in front of those that have none. A step for each look; nothing where no day can be shut. */
export function* shutWeeks(
  { plan, season, notice }: NoticeInPlan,
  plantingIds: readonly string[],
): Generator<RemedyCandidate | undefined, void> {
  const at = { zone: notice.zoneId as string, season: plan.season };
  const shutOffs = plantingIds.flatMap((id) => newShutOff(plantingsById(season).get(id)?.own, at));
  const shut = new Map<string, OpenDaysEdit>();
  const together = (): Edit => ({ type: 'together', edits: [...shutOffs, ...shut.values()] });
  let now = season;
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const plantings = plantingsById(now);
    const fewer = plantingIds.flatMap((id) => fewerDays(plantings.get(id)?.own, at));
    if (fewer.length === 0) break;
    for (const edit of fewer) shut.set(`${edit.week} ${edit.planting}`, edit);
    const result = tryEdit(plan, together());
    if (!result.ok) return;
    now = computeSeason(result.plan, now);
    yield undefined;
  }
  const weeks = new Set([...shut.values()].map(({ week }) => week)).size;
  if (weeks > 0) yield { kind: 'shut-weeks', plantingIds, weeks, edit: together() };
}

type OpenDaysEdit = Extract<Edit, { type: 'set-open-days' }>;

interface At {
  readonly zone: string;
  readonly season: PlanSeason;
}

/** A shut-off for one that has none, and open on every watering day of each week in which its line ran. */
function newShutOff(own: PlantingSeason | undefined, at: At): readonly Edit[] {
  if (own === undefined || own.planting.hasShutOff) return [];
  const { id: planting, watering } = own.planting;
  return [
    { type: 'change-planting', zone: at.zone, planting, change: { shutOff: true, watering } },
    ...weeksWhere(own.weeks, (week) => own.at(P.openDays, week) > 0).map((week) => openOn(own, at, week, EVERY_DAY)),
  ];
}

/** In weeks in which a planting's water drains, as many open days as bring what does not. */
function fewerDays(own: PlantingSeason | undefined, at: At): readonly OpenDaysEdit[] {
  if (own === undefined) return [];
  return weeksWhere(own.weeks, (week) => own.at(P.state, week) === OVER).flatMap((week) => {
    const open = own.at(P.openDays, week);
    const share = 1 - wastedMm(own, week) / own.at(P.irrigationNetMm, week);
    const days = Math.max(0, Math.floor(open * share + 1e-9));
    return days < open ? openOn(own, at, week, days) : [];
  });
}

function openOn({ planting }: PlantingSeason, { zone, season }: At, week: number, days: number): OpenDaysEdit {
  return { type: 'set-open-days', zone, planting: planting.id, week: weekFirstDay(season, week), days };
}
