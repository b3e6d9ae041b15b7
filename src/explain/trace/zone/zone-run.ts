/** The minutes that a zone really runs: rounded to its timer, or as a person set them. */
import type { TraceSource, TraceStep, TraceValue } from '../trace-step.ts';
import { code, count, days, flow, input, minutes } from '../trace-value.ts';
import type { ZoneCell } from './zone-cell.ts';
import { originInput, originOf } from './zone-minutes.ts';

export function zoneRunSteps(cell: ZoneCell): readonly TraceStep[] {
  return [perDayStep(cell), cyclesStep(cell), weekStep(cell), flowStep(cell)];
}

function perDayStep(cell: ZoneCell): TraceStep {
  const { dayCount, at } = cell;
  const origin = originOf(cell);
  const result = minutes(at('minutesPerDay'));
  if (origin === 'computed') {
    return {
      id: 'minutes-per-day',
      variant: origin,
      source: [{ id: 'cycle-and-soak' }, { id: 'longest-cycle', cite: 'Irrigation Association (2008)' }],
      inputs: [originInput(cell), ...roundingInputs(cell)],
      result,
    };
  }
  const choice = cell.zoneSeason.zone.choices.get(cell.week);
  const given = origin === 'run' ? choice?.minutesRun : choice?.minutes;
  const source: TraceSource = { id: origin === 'run' ? 'run-log' : 'choice-of-week' };
  return {
    id: 'minutes-per-day',
    variant: origin,
    source: [source],
    inputs: [
      originInput(cell),
      ...(origin === 'closed' || given === undefined ? [] : [input('minutes-given', minutes(given))]),
      input('week-watering-days', days(dayCount)),
    ],
    result,
  };
}

function roundingInputs({ zoneSeason: { zone }, at }: ZoneCell): readonly TraceValue[] {
  return [
    input('minutes-needed', minutes(at('minutesWanted'))),
    input('timer-step', minutes(zone.timerStepMinutes)),
    longestCycle(zone.longestCycleMinutes),
  ];
}

function longestCycle(longest: number): TraceValue {
  return input('longest-cycle', longest < Number.POSITIVE_INFINITY ? minutes(longest) : code('limit', 'no-limit'));
}

function cyclesStep(cell: ZoneCell): TraceStep {
  const { zoneSeason, at } = cell;
  const isComputed = originOf(cell) === 'computed';
  return {
    id: 'cycles',
    variant: isComputed ? 'computed' : 'given',
    source: [{ id: 'cycle-and-soak' }],
    inputs: isComputed
      ? roundingInputs(cell)
      : [input('minutes-per-day', minutes(at('minutesPerDay'))), longestCycle(zoneSeason.zone.longestCycleMinutes)],
    result: count(at('cycles')),
  };
}

function weekStep({ at, dayCount }: ZoneCell): TraceStep {
  return {
    id: 'minutes',
    variant: 'zone',
    source: [{ id: 'definition' }],
    inputs: [input('minutes-per-day', minutes(at('minutesPerDay'))), input('week-watering-days', days(dayCount))],
    result: minutes(at('minutes')),
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
