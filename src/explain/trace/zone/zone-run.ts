/** The minutes that a zone really runs, day by day: decided on its mornings, or as a person set them. */

import type { ToldMorning } from '../../../engine/season/told-morning.ts';
import { heldMask } from '../../../engine/season/week-masks.ts';
import { timerOf } from '../../../engine/season/week-timer.ts';
import { LEAST_MINUTES, type ZoneMorning } from '../../../engine/season/zone-morning.ts';
import { settableCycles } from '../../../engine/season/zone-sum.ts';
import { minutesOnDay } from '../../../engine/season/zone-week.ts';
import { nearestRun } from '../../../engine/soil/cycle-and-soak.ts';
import { daysIn, weekSpan } from '../day-span.ts';
import { isInMask } from '../planting/planting-cell.ts';
import type { TraceFigure, TraceStep, TraceValue } from '../trace-step.ts';
import { code, count, days, depth, flow, input, minutes, rate, share } from '../trace-value.ts';
import { limitsOf, type ZoneCell } from './zone-cell.ts';
import { decidersOf, originInput, originOf, zoneMinutesStep } from './zone-minutes.ts';

export function zoneRunSteps(cell: ZoneCell): readonly TraceStep[] {
  const { mornings } = cell;
  const decided = mornings.flatMap((morning) =>
    morning.decided === undefined ? [] : [{ ...morning, decided: morning.decided }],
  );
  const shown = originOf(cell) === 'computed' ? decided : decided.slice(0, 1);
  const [first] = shown.length > 0 ? shown : mornings;
  return [
    ...(first === undefined || shown.length > 0 ? [] : [zoneMinutesStep(cell, first)]),
    ...shown.flatMap((morning) => [
      zoneMinutesStep(cell, morning),
      ...(originOf(cell) === 'computed' ? [morningStep(cell, morning), ...cutSteps(cell, morning)] : []),
    ]),
    ...(originOf(cell) === 'computed' ? [] : [givenStep(cell)]),
    weekStep(cell, decided.length),
    cyclesStep(cell),
    flowStep(cell),
  ];
}

type Decided = ToldMorning & { readonly decided: ZoneMorning };

/** What the timer makes of a morning's minutes. */
function morningStep(cell: ZoneCell, morning: Decided): TraceStep {
  const { wanted, run } = morning.decided;
  const nearest = nearestRun(wanted, timerOf(cell.zoneSeason, cell.week)).minutes;
  const isTried = wanted > LEAST_MINUTES && nearest < wanted;
  return {
    id: 'minutes-per-day',
    day: cell.season.garden.span.firstDay + morning.day,
    variant: variantOf(wanted, run.minutes, nearest),
    source: [
      { id: 'choice-nearest' },
      { id: 'cycle-and-soak' },
      { id: 'longest-cycle', cite: 'Irrigation Association (2008)' },
    ],
    inputs: [
      input('minutes-needed', minutes(wanted)),
      ...timerInputs(cell),
      ...(isTried
        ? decidersOf(cell, morning).flatMap(({ member, told }) => limitInputs(cell, morning, member, told))
        : []),
    ],
    result: minutes(run.minutes),
  };
}

/** What a cut leaves of them. */
function cutSteps(cell: ZoneCell, { day, uncutMinutes, minutes: left }: Decided): readonly TraceStep[] {
  const cutShare = cell.at('cutShare');
  if (cutShare === 0) return [];
  const { timerStepMinutes } = cell.zoneSeason.zone;
  return [
    {
      id: 'minutes-cut',
      day: cell.season.garden.span.firstDay + day,
      source: [{ id: 'choice-cut' }],
      inputs: [
        input('minutes-per-day', minutes(uncutMinutes)),
        input('cut-share', share(cutShare)),
        input('timer-step', minutes(timerStepMinutes)),
      ],
      result: minutes(left),
    },
  ];
}

function variantOf(wanted: number, ran: number, nearest: number): 'idle' | 'skipped' | 'up' | 'nearest' {
  if (ran === 0) return wanted > LEAST_MINUTES ? 'skipped' : 'idle';
  return ran > nearest ? 'up' : 'nearest';
}

type Decider = ReturnType<typeof decidersOf>[number];

/** Whether a planting lasts until its next watering. */
function limitInputs(
  cell: ZoneCell,
  { day }: ToldMorning,
  member: Decider['member'],
  told: Decider['told'],
): readonly TraceValue[] {
  const { passAboveMm, netMm } = limitsOf(cell, member, told, day);
  const { name } = member;
  return [
    input({ id: 'depletion-of', name }, depth(told.depletionMm)),
    input({ id: 'net-rate-of', name }, rate(60 * netMm)),
    input({ id: 'lasts-from', name }, finite(passAboveMm, depth)),
  ];
}

function timerInputs({ zoneSeason, week }: ZoneCell): readonly TraceValue[] {
  const { zone } = zoneSeason;
  const { runsADay } = timerOf(zoneSeason, week);
  return [
    input('timer-step', minutes(zone.timerStepMinutes)),
    input('longest-cycle', finite(zone.longestCycleMinutes, minutes)),
    input('starts-a-day', count(zone.startsADay)),
    ...(runsADay > 1 ? [input('runs-a-day', count(runsADay))] : []),
  ];
}

function finite(value: number, figure: (value: number) => TraceFigure): TraceFigure {
  return value < Number.POSITIVE_INFINITY ? figure(value) : code('limit', 'no-limit');
}

/** Minutes that a person set or logged. */
function givenStep(cell: ZoneCell): TraceStep {
  const { dayCount, at } = cell;
  const origin = originOf(cell);
  const choice = cell.zoneSeason.zone.choices.get(cell.week);
  const result = minutes(at('minutesPerDay'));
  if (origin === 'run' && choice?.runs !== undefined) {
    return {
      id: 'minutes-per-day',
      variant: 'run-by-day',
      source: [{ id: 'run-log' }],
      inputs: [originInput(cell), ...dayInputs(cell)],
      result,
    };
  }
  const given = origin === 'run' ? choice?.minutesRun : choice?.minutes;
  return {
    id: 'minutes-per-day',
    variant: origin === 'computed' ? 'hand-set' : origin,
    source: [{ id: origin === 'run' ? 'run-log' : 'choice-of-week' }],
    inputs: [
      originInput(cell),
      ...(origin === 'closed' || given === undefined ? [] : [input('minutes-given', minutes(given))]),
      input('week-watering-days', days(dayCount)),
    ],
    result,
  };
}

/** Watering days, and others that were run. */
function dayInputs({ season, zoneSeason, week }: ZoneCell): readonly TraceValue[] {
  const wateringDays = heldMask(zoneSeason.zone, week);
  return daysIn(
    weekSpan(week),
    (day) => isInMask(wateringDays, day - 7 * week) || minutesOnDay(zoneSeason, day) > 0,
  ).map((day) =>
    input({ id: 'day-minutes', day: season.garden.span.firstDay + day }, minutes(minutesOnDay(zoneSeason, day))),
  );
}

/** One number where it stands on every day that runs, else day by day. */
function weekStep(cell: ZoneCell, decisions: number): TraceStep {
  const { zoneSeason, week, at } = cell;
  const running = daysIn(weekSpan(week), (day) => minutesOnDay(zoneSeason, day) > 0);
  const isOne =
    decisions <= 1 &&
    at('cutShare') === 0 &&
    running.every((day) => minutesOnDay(zoneSeason, day) === at('minutesPerDay'));
  return {
    id: 'minutes',
    variant: isOne ? 'one-number' : 'by-day',
    source: [{ id: 'definition' }],
    inputs: isOne
      ? [input('minutes-per-day', minutes(at('minutesPerDay'))), input('run-days', days(running.length))]
      : dayInputs(cell),
    result: minutes(at('minutes')),
  };
}

/** Of the day that runs longest. */
function cyclesStep(cell: ZoneCell): TraceStep {
  const { zoneSeason, week, at } = cell;
  const isSettable = settableCycles(timerOf(zoneSeason, week), at('minutesPerDay')) !== undefined;
  const [step, ...others] = timerInputs(cell);
  return {
    id: 'cycles',
    variant: isSettable ? 'settable' : 'between',
    source: [{ id: 'cycle-and-soak' }],
    inputs: [
      input('minutes-per-day', minutes(at('minutesPerDay'))),
      ...(isSettable && step !== undefined ? [step] : []),
      ...others,
    ],
    result: count(at('cycles')),
  };
}

function flowStep({ members, at }: ZoneCell): TraceStep {
  return {
    id: 'flow',
    source: [{ id: 'definition' }],
    inputs: members
      .filter((member) => member.at('openMask') !== 0)
      .map((member) => input({ id: 'planting', name: member.name }, flow(member.at('flowLpm')))),
    result: flow(at('flowLpm')),
  };
}
