/** The short answer to why a zone runs as it does in a week: ids, figures and units. */
import { countDays } from '../../engine/season/days-mask.ts';
import { plantingFigure, plantingState } from '../../engine/season/planting-week.ts';
import type { PlantingSeason, ZoneSeason } from '../../engine/season/season.ts';
import { zoneRuns } from '../../engine/season/zone-runs.ts';
import { zoneFigure, zoneOrigin } from '../../engine/season/zone-week.ts';

export interface WeekAnswer {
  /** What the plants would use if never short, mm over their ground. */
  readonly needMm: number;
  /** Of several plantings the one that needs the deepest water. */
  readonly most: { readonly name: string; readonly needMm: number } | undefined;
  /** Rain counted, mm. */
  readonly rainCountedMm: number;
  readonly run: RunAnswer;
  /** Plantings in the ground, and how many of them get what they need. */
  readonly plantings: number;
  readonly met: number;
}

/** What sets a week's run: one planting, all by their areas, a person, or what keeps it from running. */
export type RunCause = 'planting' | 'weighted' | 'hand-set' | 'run' | 'closed' | 'skipped' | 'none';

export interface RunAnswer {
  readonly cause: RunCause;
  /** The planting that sets the run, by id and name. */
  readonly decider: { readonly id: string; readonly name: string } | undefined;
  /** Days that run alike, with the minutes of each. */
  readonly runs: readonly { readonly days: number; readonly minutes: number }[];
}

/** Undefined while nothing is in the ground. */
export function weekAnswer(zone: ZoneSeason, week: number): WeekAnswer | undefined {
  const present = zone.plantings.filter((member) => plantingFigure(member, 'groundDays', week) > 0);
  const [thirstiest] = present.toSorted((one, other) => needOf(other, week) - needOf(one, week));
  if (thirstiest === undefined) return undefined;
  const areaM2 = present.reduce((sum, { planting }) => sum + planting.areaM2, 0);
  const litres = present.reduce((sum, member) => sum + needOf(member, week) * member.planting.areaM2, 0);
  const states = present.map((member) => plantingState(member, week));
  return {
    needMm: areaM2 > 0 ? litres / areaM2 : 0,
    most: present.length > 1 ? { name: thirstiest.planting.name, needMm: needOf(thirstiest, week) } : undefined,
    rainCountedMm: zoneFigure(zone, 'rainCreditMm', week),
    run: runAnswer(zone, present, week),
    plantings: present.length,
    met: states.filter((state) => state === 'met' || state === 'over').length,
  };
}

const needOf = (member: PlantingSeason, week: number): number => plantingFigure(member, 'demandMm', week);

function runAnswer(zone: ZoneSeason, present: readonly PlantingSeason[], week: number): RunAnswer {
  const runs = zoneRuns(zone, week).map(({ mask, minutes }) => ({ days: countDays(mask), minutes }));
  const origin = zoneOrigin(zone, week);
  const answer = { decider: undefined, runs };
  if (origin !== 'computed') return { ...answer, cause: origin };
  if (runs.length === 0) {
    return { ...answer, cause: zoneFigure(zone, 'skippedMask', week) === 0 ? 'none' : 'skipped' };
  }
  if (zone.zone.rule.kind === 'area-weighted') return { ...answer, cause: 'weighted' };
  const decider = deciderOf(zone, present, week);
  return { ...answer, cause: 'planting', decider: { id: decider.planting.id, name: decider.planting.name } };
}

/** The planting that the rule names while it asks for water, else the one without a shut-off that asks for the most minutes. */
function deciderOf({ zone }: ZoneSeason, present: readonly PlantingSeason[], week: number): PlantingSeason {
  const asked = (member: PlantingSeason) => {
    const minutes = plantingFigure(member, 'minutesWanted', week);
    return Number.isFinite(minutes) ? minutes : 0;
  };
  const { rule } = zone;
  const named = rule.kind === 'planting' ? present.find(({ planting }) => planting.id === rule.plantingId) : undefined;
  if (named !== undefined && asked(named) > 0) return named;
  const open = present.filter(({ planting }) => !planting.hasShutOff);
  const deciding = open.some((member) => asked(member) > 0) ? open : present;
  return deciding.reduce((most, member) => (asked(member) > asked(most) ? member : most));
}
