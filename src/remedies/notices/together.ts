/** Two changes at once: where one alone helps and does harm, another may mend that. */
import { type Season, ZONE_FIELDS as Z } from '../../engine/season/season.ts';
import { weeksWhere } from '../../explain/notices/runs.ts';
import { computeSeason } from '../../plan/compute-season.ts';
import { tryEdit } from '../../plan/edits/apply-edit.ts';
import type { Edit } from '../../plan/edits/edit.ts';
import type { Plan } from '../../plan/schema/plan-schema.ts';
import { weekFirstDay } from '../../plan/season-weeks.ts';
import type { NoticeInPlan, RemedyCandidate } from './remedy.ts';

/** What is held back in one week may be asked for in the next: so many times the weeks are looked through. */
const MOST_ROUNDS = 3;

const ROUNDING_MINUTES = 1e-9;

export function together(one: RemedyCandidate, other: RemedyCandidate): RemedyCandidate {
  return { kind: 'together', parts: [...partsOf(one), ...partsOf(other)], edit: togetherEdit(one, other) };
}

function partsOf(candidate: RemedyCandidate): readonly RemedyCandidate[] {
  return candidate.kind === 'together' ? (candidate.parts as readonly RemedyCandidate[]) : [candidate];
}

function togetherEdit(...candidates: readonly Pick<RemedyCandidate, 'edit'>[]): Edit {
  return {
    type: 'together',
    edits: candidates.flatMap(({ edit }) => (edit.type === 'together' ? edit.edits : [edit])),
  };
}

/** With a change, and no zone longer than now in any week; a step for each look. Nothing where none would run longer. */
export function* noLongerWith(
  { plan, season }: Pick<NoticeInPlan, 'plan' | 'season'>,
  candidate: RemedyCandidate,
): Generator<RemedyCandidate | undefined, void> {
  const set = new Map<string, MinutesEdit>();
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const result = tryEdit(plan, togetherEdit(candidate, ...[...set.values()].map((edit) => ({ edit }))));
    if (!result.ok) return;
    const longer = longerWeeks(plan, season, computeSeason(result.plan, season));
    yield undefined;
    if (longer.length === 0) break;
    for (const edit of longer) set.set(`${edit.week} ${edit.zone}`, edit);
  }
  const edits = [...set.values()];
  if (edits.length === 0) return;
  yield together(candidate, {
    kind: 'minutes-as-now',
    zoneIds: [...new Set(edits.map(({ zone }) => zone))],
    weeks: new Set(edits.map(({ week }) => week)).size,
    edit: { type: 'together', edits },
  });
}

type MinutesEdit = Extract<Edit, { type: 'set-minutes' }>;

/** The minutes of before, for each zone and week that runs longer. */
function longerWeeks(plan: Plan, season: Season, next: Season): readonly MinutesEdit[] {
  const before = new Map(season.zones.map(({ zone, figures }) => [zone.id, figures]));
  return next.zones.flatMap(({ zone, figures }) => {
    const was = before.get(zone.id);
    if (was === undefined) return [];
    return weeksWhere(
      season.garden.span.weeks,
      (week) => figures.at(Z.minutes, week) > was.at(Z.minutes, week) + ROUNDING_MINUTES,
    ).map(
      (week): MinutesEdit => ({
        type: 'set-minutes',
        zone: zone.id,
        week: weekFirstDay(plan.season, week),
        minutes: was.at(Z.minutes, week),
      }),
    );
  });
}
