/** On which days a planting's line is open. */
import { fewestOpenDays, openMasks } from '../../../engine/season/open-days.ts';
import { fillingDays } from '../../../engine/season/refill.ts';
import { minutesOnDays, weekOutlook } from '../../../engine/season/week-outlook.ts';
import { minutesToFill } from '../../../engine/season/zone-member.ts';
import type { MinutesRequest } from '../../../engine/season/zone-minutes.ts';
import { isDeciding } from '../../../engine/season/zone-morning.ts';
import { zoneFigure, zoneOrigin } from '../../../engine/season/zone-week.ts';
import { nearestRun } from '../../../engine/soil/cycle-and-soak.ts';
import { daysIn } from '../day-span.ts';
import type { TraceFigure, TraceStep, TraceValue } from '../trace-step.ts';
import { code, count, days, depth, input, minutes, rate, weekdays } from '../trace-value.ts';
import { isInMask, minutesOfDay, type PlantingCell } from './planting-cell.ts';
import { changeInputs, type PlantingMorning, requestsIn } from './planting-morning.ts';

export function openDaysSteps(cell: PlantingCell): readonly TraceStep[] {
  const { mornings } = cell;
  const first = mornings.find(({ openMask }) => openMask !== 0) ?? mornings[0];
  return [...(cell.planting.hasShutOff && first !== undefined ? [namedStep(cell, first)] : []), openStep(cell)];
}

/** The days that are named for a shut-off on the planting's first watering morning of the week. */
function namedStep(cell: PlantingCell, morning: PlantingMorning): TraceStep {
  const { zone, week, planting, dayOf } = cell;
  const masks = openMasks(zone.wateringDays);
  const all = weekdaysOf(cell, masks.at(-1) as number);
  const of = { id: 'named-days', day: dayOf(morning.index), source: [{ id: 'choice-open-days' }] } as const;
  const choice = zone.choices.get(week);
  const byHand = choice?.openDays?.get(planting.id);
  if (byHand !== undefined) {
    return {
      ...of,
      variant: 'hand-set',
      inputs: [input('hand-set-days', days(byHand)), input('days-watering', all)],
      result: weekdaysOf(cell, masks[Math.min(byHand, masks.length - 1)] as number),
    };
  }
  if (cell.keeper.isRefill) return fillingStep(cell, morning);
  const { minutesAsked: asked, index: day, depletionMm, outlook, forecast } = morning;
  const ran = zoneMinutes(cell, morning);
  const scratch = weekOutlook(outlook.days);
  const member = { outlook, depletionMm, request: { minutesPerDay: asked } };
  const named = fewestOpenDays(member, scratch, { masks, minutes: ran, day, forecast });
  if (named === 0)
    return { ...of, variant: 'none', inputs: [input('minutes-asked', askedFigure(asked))], result: NONE };
  const tried = masks.slice(1, Math.min(named + 1, masks.length - 1)).map((mask, before): TraceValue => {
    const needed = minutesOnDays(outlook, scratch, { day, mask, depletionMm, forecast });
    return input({ id: 'minutes-on-days', openDays: before + 1 }, askedFigure(needed));
  });
  return {
    ...of,
    variant: 'fewest',
    inputs: [input('zone-minutes', minutes(ran)), ...tried, input('days-watering', all)],
    result: weekdaysOf(cell, masks[named] as number),
  };
}

/** Those of its first watering morning; of runs logged by day the greatest. */
function zoneMinutes({ zone, zoneSeason, week }: PlantingCell, morning: PlantingMorning): number {
  const { runs } = zone.choices.get(week) ?? {};
  return runs === undefined ? morning.minutes : zoneFigure(zoneSeason, 'minutesPerDay', week);
}

/** Of a refill: from the day on which it is expected to be due, as many watering days as fill it. */
function fillingStep(cell: PlantingCell, morning: PlantingMorning): TraceStep {
  const { zone, zoneSeason, week, days: of, dayOf } = cell;
  const { index, filling, outlook, forecast } = morning;
  const { start, mask, last } = outlook;
  const step = { id: 'named-days', day: dayOf(index), source: [{ id: 'choice-open-days' }] } as const;
  if (filling === undefined) {
    return { ...step, variant: 'none', inputs: [input('due', code('answer', 'no'))], result: NONE };
  }
  // Minutes that a person gave are what the zone will run.
  const isComputed = zoneOrigin(zoneSeason, week) === 'computed';
  const asked =
    isComputed && decides(cell, morning)
      ? minutesToFill(filling.depletionMm, of.netMmPerMinute[filling.day] as number)
      : 0;
  const run = asked < Number.POSITIVE_INFINITY ? nearestRun(asked, zone, true).minutes : 0;
  const minutesEach = Math.max(zoneMinutes(cell, morning), run);
  const ahead = daysIn({ first: filling.day, end: last + 1 });
  const isWatering = (day: number) => isInMask(mask, day - start);
  const given = { first: index, minutes: minutesEach, forecast };
  return {
    ...step,
    variant: 'filling',
    inputs: [
      input('days-due', weekdays([dayOf(filling.day)])),
      input({ id: 'day-depletion-start', day: dayOf(filling.day) }, depth(filling.depletionMm)),
      ...changeInputs(morning, filling.day, last, dayOf),
      ...ahead
        .filter(isWatering)
        .map((day) => input({ id: 'day-net-rate', day: dayOf(day) }, rate(60 * (of.netMmPerMinute[day] as number)))),
      input('zone-minutes', minutes(minutesEach)),
      input('days-watering', weekdays(daysIn({ first: index, end: last + 1 }, isWatering).map(dayOf))),
    ],
    result: weekdaysOf(cell, fillingDays(outlook, filling, given)),
  };
}

/** Whether its request makes the zone's minutes on a morning. */
function decides({ zone, zoneSeason, own }: PlantingCell, { zone: morning }: PlantingMorning): boolean {
  const requests = requestsIn(zoneSeason, morning);
  return isDeciding(zone.rule, requests, requests[zoneSeason.plantings.indexOf(own)] as MinutesRequest);
}

const NONE = code('limit', 'none');

function askedFigure(asked: number): TraceFigure {
  return asked === Number.POSITIVE_INFINITY ? code('limit', 'no-run-is-enough') : minutes(asked);
}

function openStep(cell: PlantingCell): TraceStep {
  const { zoneSeason, planting, ground, at } = cell;
  const of = { id: 'open-days', source: [{ id: 'definition' }], result: count(at('openDays')) } as const;
  const running = daysIn(ground, (index) => minutesOfDay(zoneSeason, index) > 0);
  const open = weekdaysOf(cell, at('openMask'));
  if (running.length === 0 || open === NONE) {
    return { ...of, variant: 'none', inputs: [input('days-open', open), input('days-running', ran(cell, running))] };
  }
  return {
    ...of,
    variant: planting.hasShutOff ? 'shut-off' : 'no-shut-off',
    inputs: [input('days-open', open), input('days-running', ran(cell, running))],
  };
}

function ran({ dayOf }: PlantingCell, indexes: readonly number[]): TraceFigure {
  return indexes.length === 0 ? NONE : weekdays(indexes.map(dayOf));
}

/** The days of a mask of the week's days. */
function weekdaysOf({ week, dayOf }: PlantingCell, mask: number): TraceFigure {
  const offsets = [0, 1, 2, 3, 4, 5, 6].filter((offset) => isInMask(mask, offset));
  return offsets.length === 0 ? NONE : weekdays(offsets.map((offset) => dayOf(7 * week + offset)));
}
