/** What a season's log teaches of its zones: minutes that were really run against those that the plan computed for the same weeks. */
import type { Season } from '../../engine/season/season.ts';
import { zoneFigure, zoneOrigin } from '../../engine/season/zone-week.ts';
import { computeSeason } from '../compute-season.ts';
import type { Plan, PlanZone } from '../schema/plan-schema.ts';
import { withoutRuns } from './without-runs.ts';

export interface ZoneLearned {
  readonly zone: string;
  readonly name: string;
  /** With a log of what ran. */
  readonly weeks: number;
  readonly minutesRun: number;
  readonly minutesComputed: number;
  /** Irrigation efficiency that the plan computes with, 0 to 1. */
  readonly efficiencyNow: number;
  /** With which it would have computed what was run; undefined where that is none. */
  readonly efficiencyThen: number | undefined;
}

/** Fewer weeks teach nothing, and neither does a difference that small. */
const LEAST_WEEKS = 4;
const LEAST_DIFFERENCE = 0.05;

/** As the plan's field has it. */
const LEAST_EFFICIENCY = 0.05;

/**
 * Zones whose runs were logged, in the plan's order. More minutes than computed mean that less of them arrives than the plan takes
 * for granted, unless plants were overwatered: so it is shown, and used only where a person says so. Computes a season.
 */
export function learnedOf(plan: Plan, season: Season): readonly ZoneLearned[] {
  const { choices: _choices, ...undecided } = plan;
  const computed = computeSeason(withoutRuns(undecided), season);
  return season.zones.flatMap((zone, index) => {
    const weeks = Array.from({ length: zone.weeks }, (_, week) => week).filter(
      (week) => zoneOrigin(zone, week) === 'run',
    );
    if (weeks.length === 0) return [];
    const sum = (of: Season) =>
      weeks.reduce((total, week) => total + zoneFigure(of.zones[index] as typeof zone, 'minutes', week), 0);
    const [minutesRun, minutesComputed] = [sum(season), sum(computed)];
    const efficiencyNow = zone.zone.efficiency;
    return [
      {
        zone: zone.zone.id,
        name: zone.zone.name,
        weeks: weeks.length,
        minutesRun,
        minutesComputed,
        efficiencyNow,
        efficiencyThen: efficiencyThen({ weeks: weeks.length, minutesRun, minutesComputed, efficiencyNow }),
      },
    ];
  });
}

type Compared = Pick<ZoneLearned, 'weeks' | 'minutesRun' | 'minutesComputed' | 'efficiencyNow'>;

function efficiencyThen({ weeks, minutesRun, minutesComputed, efficiencyNow }: Compared): number | undefined {
  if (weeks < LEAST_WEEKS || minutesRun <= 0 || minutesComputed <= 0) return undefined;
  const then = efficiencyNow * (minutesComputed / minutesRun);
  if (Math.abs(then / efficiencyNow - 1) < LEAST_DIFFERENCE) return undefined;
  const rounded = Math.round(100 * then) / 100;
  return rounded >= LEAST_EFFICIENCY && rounded <= 1 ? rounded : undefined;
}

/** The plan with the efficiency of those zones, for all their lines. */
export function withLearned(plan: Plan, learned: Iterable<ZoneLearned>): Plan {
  const efficiencies = new Map([...learned].map(({ zone, efficiencyThen: value }) => [zone, value]));
  const zones = plan.zones.map((zone): PlanZone => {
    const value = efficiencies.get(zone.id);
    if (value === undefined) return zone;
    const plantings = zone.plantings.map((planting) => ({
      ...planting,
      lines: planting.lines.map(withoutApplication),
    }));
    return { ...zone, plantings, application: { kind: 'efficiency', value } };
  });
  return { ...plan, zones };
}

type Line = PlanZone['plantings'][number]['lines'][number];

function withoutApplication(line: Line): Line {
  if (line.kind === 'solid') return line;
  const { application: _application, ...kept } = line;
  return kept;
}
