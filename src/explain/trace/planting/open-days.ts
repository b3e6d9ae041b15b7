/** On which days a planting's line is open. */

import { daysMask, daysOfMask } from '../../../engine/season/days-mask.ts';
import { EVERY_DAY } from '../../../engine/season/given-minutes.ts';
import { fewestOpenDays, openMasks, withoutRest } from '../../../engine/season/open-days.ts';
import { fillingDays, minutesExpected } from '../../../engine/season/refill.ts';
import { heldMask } from '../../../engine/season/week-masks.ts';
import { minutesOnDays, weekOutlook } from '../../../engine/season/week-outlook.ts';
import { timerOf } from '../../../engine/season/week-timer.ts';
import type { MinutesRequest } from '../../../engine/season/zone-minutes.ts';
import { isDeciding } from '../../../engine/season/zone-morning.ts';
import { minutesOnDay, zoneFigure, zoneOrigin } from '../../../engine/season/zone-week.ts';
import { daysIn } from '../day-span.ts';
import type { TraceFigure, TraceStep, TraceValue } from '../trace-step.ts';
import { code, count, days, depth, input, minutes, rate, weekdays } from '../trace-value.ts';
import { isInMask, type PlantingCell } from './planting-cell.ts';
import { changeInputs, type PlantingMorning, requestsIn, rootedInputs } from './planting-morning.ts';

export function openDaysSteps(cell: PlantingCell): readonly TraceStep[] {
  const { mornings } = cell;
  const first = mornings.find(({ openMask }) => openMask !== 0) ?? mornings[0];
  return [...(cell.planting.hasShutOff && first !== undefined ? [namedStep(cell, first)] : []), openStep(cell)];
}

/** The days that are named for a shut-off on the planting's first watering morning of the week. */
function namedStep(cell: PlantingCell, morning: PlantingMorning): TraceStep {
  const { zone, week, planting, dayOf } = cell;
  const masks = openMasks(heldMask(zone, week));
  const watering = masks.at(-1) as number;
  const all = input('days-watering', weekdaysOf(cell, watering));
  const of = { id: 'named-days', day: dayOf(morning.index), source: [{ id: 'choice-open-days' }] } as const;
  const choice = zone.choices.get(week);
  const byHand = choice?.openDays?.get(planting.id);
  if (byHand !== undefined) {
    return {
      ...of,
      variant: 'hand-set',
      inputs: [input('hand-set-days', days(byHand)), all],
      result: weekdaysOf(cell, masks[Math.min(byHand, masks.length - 1)] as number),
    };
  }
  if (cell.keeper.isRefill) return fillingStep(cell, morning);
  const { minutesAsked: asked, index: day, depletionMm, outlook } = morning;
  const ran = zoneMinutes(cell, morning);
  const scratch = weekOutlook(outlook.days);
  const member = { outlook, stores: { wettedMm: depletionMm }, request: { minutesPerDay: asked } };
  const fewest = fewestOpenDays(member, scratch, { masks, minutes: ran, day });
  if (fewest === 0)
    return { ...of, variant: 'none', inputs: [input('minutes-asked', askedFigure(asked))], result: NONE };
  const tried = masks.slice(1, Math.min(fewest + 1, masks.length - 1)).map((mask, before): TraceValue => {
    const needed = minutesOnDays(outlook, scratch, { day, mask, depletionMm });
    return input({ id: 'minutes-on-days', openDays: before + 1 }, askedFigure(needed));
  });
  // Until they are named it is shut.
  const asking = (mask: number) => withoutRest(mask, cell.days, 7 * week) & (EVERY_DAY << (day - 7 * week));
  return {
    ...of,
    variant: 'fewest',
    inputs: [
      input('zone-minutes', minutes(ran)),
      ...tried,
      all,
      input('days-asking', weekdaysOf(cell, asking(watering))),
    ],
    result: weekdaysOf(cell, asking(masks[fewest] as number)),
  };
}

/** Those of its first watering morning; of runs logged by day the greatest. */
function zoneMinutes({ zone, zoneSeason, week }: PlantingCell, morning: PlantingMorning): number {
  const { runs } = zone.choices.get(week) ?? {};
  return runs === undefined ? morning.minutes : zoneFigure(zoneSeason, 'minutesPerDay', week);
}

/** Of a refill: from the day on which it is expected to be due, as many watering days as fill it. */
function fillingStep(cell: PlantingCell, morning: PlantingMorning): TraceStep {
  const { zoneSeason, week, dayOf } = cell;
  const { index, filling, outlook } = morning;
  const { start, mask, last, days: of } = outlook;
  const step = { id: 'named-days', day: dayOf(index), source: [{ id: 'choice-open-days' }] } as const;
  if (filling === undefined) {
    return { ...step, variant: 'none', inputs: [input('due', code('answer', 'no'))], result: NONE };
  }
  const minutesOn = minutesExpected(
    zoneMinutes(cell, morning),
    decidingFillings(cell, morning),
    timerOf(zoneSeason, week),
  );
  const ahead = daysIn({ first: filling.day, end: last + 1 });
  const isWatering = (day: number) => isInMask(mask, day - start);
  const given = { first: index, minutesOn };
  const asking = (of: number) => withoutRest(of, cell.days, start);
  return {
    ...step,
    variant: 'filling',
    inputs: [
      input('days-due', weekdays([dayOf(filling.day)])),
      input({ id: 'day-depletion-start', day: dayOf(filling.day) }, depth(filling.depletionMm)),
      ...changeInputs(morning, filling.day, last, dayOf),
      ...rootedInputs(morning, filling.day + 1, last, dayOf),
      ...ahead
        .filter(isWatering)
        .map((day) => input({ id: 'day-net-rate', day: dayOf(day) }, rate(60 * (of.netMmPerMinute[day] as number)))),
      ...ahead.filter(isWatering).map((day) => input({ id: 'day-minutes', day: dayOf(day) }, minutes(minutesOn(day)))),
      input('days-watering', weekdaysOf(cell, asking(mask & daysMask(index - start, last + 1 - start)))),
    ],
    result: weekdaysOf(cell, asking(fillingDays(outlook, filling, given))),
  };
}

/** Of the plantings that decide the zone's minutes; of one of them its own alone. Minutes that a person gave are what the zone will run. */
function decidingFillings({ zone, zoneSeason, own, week }: PlantingCell, { zone: morning }: PlantingMorning) {
  const requests = requestsIn(zoneSeason, morning);
  const fillings = morning.plantings.map(({ filling }, at) =>
    isDeciding(zone.rule, requests, requests[at] as MinutesRequest) ? filling : undefined,
  );
  const filling = fillings[zoneSeason.plantings.indexOf(own)];
  if (zoneOrigin(zoneSeason, week) !== 'computed') return [];
  return filling === undefined ? fillings : [filling];
}

const NONE = code('limit', 'none');

function askedFigure(asked: number): TraceFigure {
  return asked === Number.POSITIVE_INFINITY ? code('limit', 'no-run-is-enough') : minutes(asked);
}

function openStep(cell: PlantingCell): TraceStep {
  const { zoneSeason, planting, ground, at } = cell;
  const of = { id: 'open-days', source: [{ id: 'definition' }], result: count(at('openDays')) } as const;
  const running = daysIn(ground, (index) => minutesOnDay(zoneSeason, index) > 0);
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
  const offsets = daysOfMask(mask);
  return offsets.length === 0 ? NONE : weekdays(offsets.map((offset) => dayOf(7 * week + offset)));
}
