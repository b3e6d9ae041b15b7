/** What comes of a candidate: the season after its edit. */
import { shutOffCalendar } from '../../engine/mix/shut-off-calendar.ts';
import type { Season } from '../../engine/season/season.ts';
import type { SeasonBuffers } from '../../engine/season/zone-season.ts';
import { computeSeason } from '../../plan/compute-season.ts';
import { tryEdit } from '../../plan/edits/apply-edit.ts';
import type { Edit } from '../../plan/edits/edit.ts';
import type { Plan } from '../../plan/schema/plan-schema.ts';
import { type MixFigures, mixFigures } from './mix-figures.ts';
import { remedyWorth } from './rank.ts';
import type { MixCandidate, MixRemedy, ShutOffCalendar } from './remedy.ts';

export interface Evaluated {
  readonly remedy: MixRemedy;
  /** Holds until the next candidate is evaluated. */
  readonly season: Season;
}

export interface BeforeRemedy {
  readonly plan: Plan;
  /** Of that plan. */
  readonly season: Season;
  readonly zoneId: string;
  readonly figures: MixFigures;
  /** Lent from candidate to candidate. */
  readonly buffers: SeasonBuffers;
}

/** Nothing where the plan refuses the edit: a size out of its bounds, one zone too many. */
export function evaluate(candidate: MixCandidate, before: BeforeRemedy): Evaluated | undefined {
  const { changes, goods, edits } = candidate;
  const edit = oneStep(edits, changes);
  const result = tryEdit(before.plan, edit);
  if (!result.ok) return undefined;
  const season = computeSeason(result.plan, before.season, before.buffers);
  const zoneIds = [before.zoneId, ...changes.flatMap((change) => (change.kind === 'cut' ? [change.newZoneId] : []))];
  const after = mixFigures(season, zoneIds);
  const { figures } = before;
  const remedy: MixRemedy = {
    changes,
    goods,
    edit,
    zoneIds,
    after,
    litresSaved: figures.litres - after.litres,
    drainedLitresAvoided: figures.drainedLitres - after.drainedLitres,
    unmetLitresAvoided: figures.unmetLitres - after.unmetLitres,
    shortDaysAvoided: figures.shortDays - after.shortDays,
    worthLitres: remedyWorth(figures, after),
    calendars: calendarsOf(candidate, season),
  };
  return { remedy, season };
}

/** A single edit as it is; a zone that is split says so of itself. */
function oneStep(edits: readonly Edit[], changes: MixCandidate['changes']): Edit {
  const [only] = edits;
  if (only !== undefined && edits.length === 1) return only;
  const isSplit = changes.length === 1 && changes[0]?.kind === 'cut';
  return { type: 'together', ...(isSplit && { action: 'split-zone' }), edits };
}

function calendarsOf({ changes }: MixCandidate, season: Season): readonly ShutOffCalendar[] {
  return changes.flatMap((change) => {
    if (change.kind !== 'shut-off') return [];
    const { plantingId } = change;
    const zone = season.zones.find(({ plantings }) => plantings.some(({ planting }) => planting.id === plantingId));
    return zone === undefined ? [] : [{ plantingId, stretches: shutOffCalendar(zone, plantingId) }];
  });
}
