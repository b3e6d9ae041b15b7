/** The text of a plan file. */
import * as v from 'valibot';
import {
  PLAN_SCHEMAS,
  type Plan,
  type PlanChoice,
  type PlanForecast,
  type PlanWeekRun,
} from '../schema/plan-schema.ts';

/**
 * Writes a plan: fields in the schema's order, days in their own, two spaces a level, a new line at the end. The same plan gives the
 * same text, and every number stands as it was typed.
 */
export function writePlan(plan: Plan): string {
  const result = v.safeParse(PLAN_SCHEMAS[plan.units], plan);
  // What is not valid is written as it is: better a file that must be put right than a loss.
  const ordered = result.success ? { ...result.output, ...orderedRecords(result.output) } : plan;
  return `${JSON.stringify(ordered, undefined, 2)}\n`;
}

function orderedRecords({ log, choices }: Pick<Plan, 'log' | 'choices'>): Pick<Plan, 'log' | 'choices'> {
  return {
    ...(log && {
      log: {
        ...log,
        ...(log.days && { days: byKey(log.days) }),
        ...(log.weeks && { weeks: byKey(log.weeks) }),
        ...(log.runs && { runs: byKey(mapValues(log.runs, (weeks) => byKey(mapValues(weeks, orderedRun)))) }),
        ...(log.meter && { meter: byKey(log.meter) }),
        ...(log.forecasts && { forecasts: log.forecasts.toSorted(byIssue).map(orderedForecast) }),
      },
    }),
    ...(choices && { choices: byKey(mapValues(choices, (weeks) => byKey(mapValues(weeks, orderedChoice)))) }),
  };
}

function orderedChoice(choice: PlanChoice): PlanChoice {
  return choice.openDays ? { ...choice, openDays: byKey(choice.openDays) } : choice;
}

function orderedRun(run: PlanWeekRun): PlanWeekRun {
  return typeof run === 'number' ? run : { ...run, days: byKey(run.days) };
}

function orderedForecast({ issued, days }: PlanForecast): PlanForecast {
  return { issued, days: byKey(days) };
}

const byIssue = (left: PlanForecast, right: PlanForecast): number => (left.issued < right.issued ? -1 : 1);

function byKey<Value>(record: Readonly<Record<string, Value>>): Record<string, Value> {
  return Object.fromEntries(Object.entries(record).sort(([left], [right]) => (left < right ? -1 : 1)));
}

function mapValues<Value, Result>(
  record: Readonly<Record<string, Value>>,
  change: (value: Value) => Result,
): Record<string, Result> {
  return Object.fromEntries(Object.entries(record).map(([key, value]) => [key, change(value)]));
}
