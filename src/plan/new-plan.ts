/** A plan that somebody begins with, and what is assumed in it until they say otherwise. */
import { type DayNumber, dayNumberOf, type IsoDate, isoDate, mondayFrom, yearOf } from '../engine/calendar.ts';
import type { UnitSystem } from '../engine/units.ts';
import { emptyPlan } from './empty-plan.ts';
import type { AssumedOfPlan, Plan } from './schema/plan-schema.ts';

/** From spring to autumn. */
const SEASON_WEEKS = 30;

/** Days before a season's end on which the next one is planned rather: so late a plan is not for the year any more. */
const LATE_DAYS = 60;

const APRIL = 3;
const OCTOBER = 9;

export interface NewPlanOptions {
  readonly units: UnitSystem;
  readonly today: DayNumber;
  readonly name: string;
  readonly zone: string;
  readonly source: string;
}

/** Flow of a usual hose bib in use, 5 gal a minute: common practice, no source. */
const USUAL_FLOW = { us: 5, metric: 18 } as const;

const ASSUMED: readonly AssumedOfPlan[] = ['season', 'soil', 'source', 'flow', 'zones', 'days', 'window'];

/** One zone on a hose bib, on three mornings a week, in loam, from spring on; nothing grows yet, and no weather is known. */
export function newPlan({ units, today, name, zone, source }: NewPlanOptions): Plan {
  const empty = emptyPlan({ units, name, firstDay: seasonStart(today, false), weeks: SEASON_WEEKS });
  return {
    ...empty,
    supply: {
      sources: [{ name: source, flow: { kind: 'typed', flow: USUAL_FLOW[units] } }],
      window: { opensAt: '05:00', hoursPerDay: 3 },
    },
    zones: [{ id: 'zone-1', name: zone, wateringDays: ['tue', 'thu', 'sat'], plantings: [] }],
    assumed: ASSUMED,
  };
}

/** The first Monday of April, in the south of October, of the season that today is in or that comes next. */
export function seasonStart(today: DayNumber, isSouth: boolean): IsoDate {
  const year = yearOf(today);
  const starts = [year - 1, year, year + 1].map((each) =>
    mondayFrom(dayNumberOf({ year: each, month: isSouth ? OCTOBER : APRIL, dayOfMonth: 1 })),
  );
  const start = starts.find((day) => today < day + 7 * SEASON_WEEKS - LATE_DAYS);
  return isoDate(start ?? today);
}
