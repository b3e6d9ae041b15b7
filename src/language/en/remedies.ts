/** What is said of the changes that mend a notice. Names of zones and plantings are data: any name fits. */
import { area } from '../area.ts';
import type { Format } from '../format/format.ts';

const DAYS = { one: 'day', other: 'days' };
const TIMES = { one: 'time', other: 'times' };
const RUNS = { one: 'run', other: 'runs' };
const WEEKS = { one: 'week', other: 'weeks' };
const ZONES = { one: 'zone', other: 'zones' };

export const remedies = {
  searching: 'Working out what would help…',
  none: 'No change of the plan that was tried helps.',
  failed: 'What would help cannot be worked out: Runnel made a mistake with this plan.',
  apply: 'Do this',
  applyLabel: (what: string) => `Do this: ${what}`,

  /** Each tells the gardener what to do. */
  change: {
    'close-loop': (planting: string) =>
      `Close the line of ${planting} into a loop: lead its end back to where its water comes from`,
    'feed-middle': ({ count, quantity }: Format, planting: string, runs: number, runLengthM: number) =>
      `Feed the line of ${planting} in its middle: ${count(runs, RUNS)} of ${quantity(runLengthM, 'length')}`,
    'cut-in-two': (planting: string, newZone: string) =>
      `Split ${planting} in two: add valve “${newZone}” for half of it`,
    spacing: ({ quantity }: Format, planting: string, spacingM: number) =>
      `Re-lay ${planting} with an emitter every ${quantity(spacingM, 'spacing')}`,
    'split-zone': ({ list }: Format, zone: string, newZone: string, plantings: readonly string[]) =>
      `Split ${zone} in two: add valve “${newZone}” for ${list(plantings)}`,
    'other-days': (days: string) => `Water on other days: ${days}`,
    'own-zone-and-days': (split: string, days: string) => `${split}, and water ${days}`,
    /** `days` a week. */
    'more-days': ({ count }: Format, days: number, which: string) =>
      `Water on ${count(days, DAYS)} a week, less on each: ${which}`,
    /** `byDays`: watering days a week with the months in which they hold, 0 = January. */
    'days-by-month': (
      { count, list, month }: Format,
      zone: string,
      byDays: readonly (readonly [days: number, months: readonly number[]])[],
    ) =>
      `Water ${zone} ${byDays.map(([days, months]) => `on ${count(days, DAYS)} a week in ${list(months.map(month))}`).join('; ')}`,
    'no-shut-off': (planting: string) => `Take out the shut-off of ${planting}, so that it is watered with the zone`,
    'keep-watered': (planting: string) => `Water ${planting} a little every week instead of deep and infrequently`,
    'more-room': ({ percent }: Format, planting: string, targetDepletion: number) =>
      `Water ${planting} less full: set its target depletion to ${percent(targetDepletion)}`,
    'more-starts': ({ count }: Format, zone: string, startsADay: number) =>
      `Let the timer start ${zone} up to ${count(startsADay, TIMES)} a day`,
    'smaller-step': ({ minutes }: Format, zone: string, timerStepMinutes: number) =>
      `Use a timer for ${zone} that can be set in steps of ${minutes(timerStepMinutes)}`,
    /** `mask`: bit 0 = Monday, which `monday` is one of. `months`: in which, 0 = January; none: all season. */
    onDays: (
      { list, month, weekdays }: Format,
      zones: readonly string[],
      days: { readonly monday: number; readonly mask: number; readonly months: readonly number[] },
    ) =>
      `${list(zones)} on ${weekdays(days.monday, days.mask)}${days.months.length === 0 ? '' : ` in ${list(days.months.map(month))}`}`,
    'fewer-minutes': ({ count, duration }: Format, zones: string, minutes: number, weeks: number) =>
      `Water less in ${count(weeks, WEEKS)}: cut ${duration(minutes)} from ${zones}`,
    'shut-weeks': ({ count, list }: Format, plantings: readonly string[], weeks: number) =>
      `Shut ${list(plantings)} off in ${count(weeks, WEEKS)}, each with a shut-off of its own`,
    'minutes-as-now': ({ count, list }: Format, zones: readonly string[], weeks: number) =>
      `Leave ${list(zones)} at the same minutes as now in ${count(weeks, WEEKS)}`,
    zones: ({ count }: Format, zones: number) => count(zones, ZONES),
    'larger-tank': ({ quantity }: Format, capacityLitres: number, beforeLitres: number) =>
      `Set up a tank of ${quantity(capacityLitres, 'volume')} instead of ${quantity(beforeLitres, 'volume')}`,
    uphill: (planting: string) => `Move the line of ${planting} to the uphill side of the plants`,
  },

  /** What a change comes to, each a sentence. */
  fixes: 'Fixes this.',
  /** `share`: 0..1. */
  remains: ({ percent }: Format, share: number) => `${percent(share)} of the problem remains.`,
  sideEffects: ({ plural }: Format, count: number, sentences: string) =>
    `${plural(count, { one: 'Side effect', other: 'Side effects' })}: ${sentences}`,
  sideEffect: (name: string, sentence: string) => `${name}: ${sentence}`,
  andMore: ({ number }: Format, count: number) => `And ${number(count)} more.`,
  asNow: 'Same water and minutes as now.',
  season: (water: string, minutes: string) => `Over the season: ${water}, ${minutes}.`,
  more: (amount: string) => `${amount} more`,
  less: (amount: string) => `${amount} less`,
  sameWater: 'same water as now',
  sameMinutes: 'same minutes as now',
  pressure: ({ quantity }: Format, afterKpa: number, beforeKpa: number) =>
    `Then ${quantity(afterKpa, 'pressure')} at its weakest emitter instead of ${quantity(beforeKpa, 'pressure')}.`,
  /** Of plantings that lose water by a change which saves more. */
  trade: ({ list, quantity }: Format, savedLitres: number, plantings: readonly string[], lostLitres: number) =>
    `Saves ${quantity(savedLitres, 'volume')} past the roots, and costs ${list(plantings)} ${quantity(lostLitres, 'volume')} of what they need.`,
  shortMore: (volume: string) => `The shortage grows by ${volume}.`,
  shortLess: (volume: string) => `The shortage falls by ${volume}.`,
};

export const remediesWords = area('remedies', remedies);
