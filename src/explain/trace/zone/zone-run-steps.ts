/** The minutes that a zone really runs: rounded to its timer, or as a person set them. */
import type { MinutesOrigin } from '../../../engine/season/season.ts';
import type { TraceStep, TraceValue } from '../trace-step.ts';
import { count, days, flow, minutes, words } from '../trace-value.ts';
import type { ZoneCell } from './zone-cell.ts';
import { originOf, originWords } from './zone-minutes-steps.ts';

export function zoneRunSteps(cell: ZoneCell): readonly TraceStep[] {
  return [perDayStep(cell), cyclesStep(cell), weekStep(cell), flowStep(cell)];
}

const BY_HAND: Readonly<Record<Exclude<MinutesOrigin, 'computed'>, string>> = {
  'hand-set': 'Set by hand, and used as it is; it wins over the calculation.',
  run: 'What was really run wins over everything else.',
  closed: 'Closed for the week by hand: nothing runs.',
};

function perDayStep(cell: ZoneCell): TraceStep {
  const { zoneSeason, week, dayCount, at } = cell;
  const { zone } = zoneSeason;
  const origin = originOf(cell);
  const result = minutes('Minutes a watering day', at('minutesPerDay'));
  const common = { id: 'minutes-per-day', title: 'Minutes a watering day', result };
  if (origin === 'computed') {
    return {
      ...common,
      says: 'Rounded up to what the timer can be set to, in equal cycles where the soil needs pauses.',
      formula:
        'steps = wanted / timer step, rounded up; cycles = steps / (whole steps in the longest cycle, at least 1), rounded up; ' +
        'minutes = cycles × (steps / cycles, rounded up) × timer step',
      source:
        'Cycle and soak: common practice; longest cycle: Irrigation Association (2008), from memory, or as set in the plan',
      inputs: [originWords(cell), ...roundingInputs(cell)],
    };
  }
  const choice = zone.choices.get(week);
  const given = origin === 'run' ? choice?.minutesRun : choice?.minutes;
  return {
    ...common,
    says: BY_HAND[origin],
    formula: origin === 'closed' ? 'minutes = 0' : 'minutes a watering day = minutes of the week / watering days',
    source: origin === 'run' ? 'The log' : 'The plan’s choice for this week',
    inputs: [
      originWords(cell),
      ...(origin === 'closed' || given === undefined ? [] : [minutes('Minutes of the week, as given', given)]),
      days('Watering days of the week', dayCount),
    ],
  };
}

function roundingInputs({ zoneSeason: { zone }, at }: ZoneCell): readonly TraceValue[] {
  return [
    minutes('Minutes a watering day wanted', at('minutesWanted')),
    minutes('Timer step', zone.timerStepMinutes),
    longestCycle(zone.longestCycleMinutes),
  ];
}

function longestCycle(longest: number): TraceValue {
  return longest < Number.POSITIVE_INFINITY
    ? minutes('Longest cycle', longest)
    : words('Longest cycle', 'no limit: the soil takes the water as fast as it comes');
}

function cyclesStep(cell: ZoneCell): TraceStep {
  const { zoneSeason, at } = cell;
  const isComputed = originOf(cell) === 'computed';
  return {
    id: 'cycles',
    title: 'Cycles of a watering day',
    says: 'Where water comes faster than the soil takes it in, the run is split and the soil has time to drink between.',
    formula: isComputed
      ? 'steps = wanted / timer step, rounded up; cycles = steps / (whole steps in the longest cycle, at least 1), rounded up'
      : 'cycles = minutes a watering day / longest cycle, rounded up; 0 where nothing runs',
    source: 'Cycle and soak: common practice, no source',
    inputs: isComputed
      ? roundingInputs(cell)
      : [minutes('Minutes a watering day', at('minutesPerDay')), longestCycle(zoneSeason.zone.longestCycleMinutes)],
    result: count('Cycles', at('cycles')),
  };
}

function weekStep({ at, dayCount }: ZoneCell): TraceStep {
  return {
    id: 'minutes',
    title: 'Minutes of the week',
    says: 'All watering days together.',
    formula: 'minutes = minutes a watering day × watering days',
    source: 'Definition',
    inputs: [minutes('Minutes a watering day', at('minutesPerDay')), days('Watering days of the week', dayCount)],
    result: minutes('Minutes of the week', at('minutes')),
  };
}

function flowStep({ members, at }: ZoneCell): TraceStep {
  const open = members.filter((member) => member.at('openMask') !== 0);
  return {
    id: 'flow',
    title: 'Flow while it runs',
    says: 'All lines that are open this week, running together.',
    formula: 'flow = sum over the open lines',
    source: 'Definition',
    inputs: open.map((member) => flow(member.label, member.at('flowLpm'))),
    result: flow('Flow', at('flowLpm')),
  };
}
