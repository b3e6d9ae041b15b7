/** What the list of notices says: around its notices, one sentence for each kind, and what to do. Names are data: any name fits. */
import type { NoticeFigures, NoticeKind, NoticeRemedy } from '../../explain/notices/notice.ts';
import type { NoticeSeverity } from '../../explain/notices/severity.ts';
import { area } from '../area.ts';
import type { Format } from '../format/format.ts';

const DAYS = { one: 'day', other: 'days' };
const WEEKS = { one: 'week', other: 'weeks' };

/** Goes on after the name of the planting, zone or garden and a colon. `groups`: names of zones that can run together. */
type Sentence<Kind extends NoticeKind> = (
  format: Format,
  figures: NoticeFigures[Kind],
  groups: readonly (readonly string[])[],
) => string;

type Sentences = { readonly [Kind in NoticeKind]: Sentence<Kind> };

const sentences: Sentences = {
  'no-climate': ({ count }, { days, otherDays }) =>
    otherDays > 0
      ? `reference ET is 0 on ${count(days, DAYS)}, as if plants used no water. Right while the ground is frozen; otherwise a month is missing.`
      : 'its climate is not filled in yet, so nobody can say what plants use. No minutes here does not mean that they need no water.',
  'no-line': ({ quantity }, { neededLitres }) =>
    `no line brings the ${quantity(neededLitres, 'volume')} of irrigation that it needs.`,
  'too-long': ({ duration }, { minutesPerDay, windowMinutes }) =>
    `needs ${duration(minutesPerDay)} a watering day; water may run for ${duration(windowMinutes)}.`,
  dry: ({ count, quantity }, { shortDays, unmetLitres }) =>
    `dries out: short on ${count(shortDays, DAYS)}, ${quantity(unmetLitres, 'volume')} in all.`,
  short: ({ count, quantity }, { shortDays, unmetLitres }) =>
    shortDays > 0
      ? `short of water on ${count(shortDays, DAYS)}, ${quantity(unmetLitres, 'volume')} in all.`
      : 'gets less than its target, but does not go short.',
  'never-enough': ({ duration }, { minutesAsked, minutesPerDay }) =>
    `never gets enough. At worst it needs ${duration(minutesAsked)} a watering day, and its zone runs ${duration(minutesPerDay)}.`,
  closed: ({ quantity }, { unmetLitres }) =>
    unmetLitres > 0
      ? `closed while plants in it go short by ${quantity(unmetLitres, 'volume')}.`
      : 'closed while plants in it need water.',
  'crop-early': ({ count }, { daysEarly }) =>
    `${count(daysEarly, DAYS)} in the ground before its planting day, with no water planned.`,
  'crop-past': ({ count }, { daysPast }) =>
    `${count(daysPast, DAYS)} in the ground after its last growth stage, with no water planned.`,
  'out-of-season': () => 'in the ground on no day of this season, so never watered.',
  over: ({ quantity, percent }, { drainedLitres, appliedLitres, drainedShare }) =>
    `${percent(drainedShare)} of its water drains past the roots: ${quantity(drainedLitres, 'volume')} of ${quantity(appliedLitres, 'volume')}.`,
  'refill-weekly': ({ quantity }, { weeklyDemandMm, readilyAvailableMm }) =>
    `set to deep, infrequent watering, but needs water weekly. A week uses ${quantity(weeklyDemandMm, 'depth')}; roots can easily take ${quantity(readilyAvailableMm, 'depth')} from the soil.`,
  'hand-set': ({ duration }, { minutes, computedMinutes }) =>
    `set by hand to ${duration(minutes)} in all; computed: ${duration(computedMinutes)}.`,
  'line-too-long': ({ quantity }, { runLengthM, longestRunM, inletPressureKpa, leastPressureKpa }) =>
    `its line runs ${quantity(runLengthM, 'length')}; its pressure carries ${quantity(longestRunM, 'length')}. ${quantity(inletPressureKpa, 'pressure')} at its start, ${quantity(leastPressureKpa, 'pressure')} at its weakest emitter.`,
  'pressure-low': ({ quantity }, { inletPressureKpa }) =>
    `${quantity(inletPressureKpa, 'pressure')} at the start of its line is too low even for the first emitter.`,
  'flow-too-great': ({ quantity }, { flowLpm, sourceLpm }) =>
    `needs ${quantity(flowLpm, 'supplyFlow')}; the supply gives ${quantity(sourceLpm, 'supplyFlow')}.`,
  'window-too-short': ({ count, duration }, { days, minutesNeeded, windowMinutes }) =>
    windowMinutes > 0
      ? `on ${count(days, DAYS)} watering takes up to ${duration(minutesNeeded)}, soak time included; you have ${duration(windowMinutes)}.`
      : `on ${count(days, DAYS)} watering is planned, but no water may run.`,
  'tank-dry': ({ quantity }, { capacityLitres, mainsLitres, sizeLitres, missingLitres }) =>
    `the tank of ${quantity(capacityLitres, 'volume')} runs dry; ${quantity(mainsLitres, 'volume')} must come from elsewhere. ${
      sizeLitres === undefined
        ? `Even the largest tank leaves you ${quantity(missingLitres ?? Number.NaN, 'volume')} short.`
        : `One of ${quantity(sizeLitres, 'volume')} would last.`
    }`,
  'allowance-exceeded': ({ quantity }, { usedLitres, overLitres, weekAllowanceLitres, seasonAllowanceLitres }) =>
    weekAllowanceLitres === undefined
      ? `uses ${quantity(usedLitres, 'volume')} over the season; the allowance is ${quantity(seasonAllowanceLitres ?? Number.NaN, 'volume')}: ${quantity(overLitres, 'volume')} too much.`
      : `uses up to ${quantity(usedLitres, 'volume')} a week; the allowance is ${quantity(weekAllowanceLitres, 'volume')}: ${quantity(overLitres, 'volume')} too much in all.`,
  'flow-together': ({ quantity, amount, list }, { flowLpm, sourceLpm }, groups) =>
    `zones on the same day need up to ${quantity(flowLpm, 'supplyFlow')}; the supply gives ${amount(sourceLpm, 'supplyFlow')}. Run in groups: ${groups.map(list).join('; ')}.`,
  'emitters-far-apart': ({ quantity }, { spacingM, widestSpacingM }) =>
    `emitters are ${quantity(spacingM, 'spacing')} apart; in this soil the wet spots meet up to ${quantity(widestSpacingM, 'spacing')}.`,
  'line-downhill': () => 'its line lies on the downhill side of the plants, so water runs away from the roots.',
};

const remedies: Readonly<Record<NoticeRemedy, string>> = {
  'lay-line': 'Lay a line with emitters to it, and add the line to the planting.',
  'water-more': 'Give it more minutes in these weeks, or more watering days.',
  'change-line':
    'Lay other emitters, closer together or farther apart, or a second loop; or give it a zone of its own.',
  'shut-off': 'Put a shut-off in front of it and open that on fewer watering days, or lay emitters with less flow.',
  'open-zone': 'Open the zone again in these weeks, or water by hand.',
  'use-computed': 'Use the computed minutes unless you had a reason.',
  'split-run': 'Water on more days, so that each run is shorter, or split the zone in two.',
  'keep-instead': 'Water it a little every week instead.',
  'check-days': 'Check the planting day and the days in the ground.',
  'shorten-run': 'Close the line into a loop, feed it in the middle, cut it in two, or space its emitters wider.',
  'more-pressure':
    'Read a gauge at the line, after any regulator, while water runs, and enter it. Then fit a regulator that gives more, or lay emitters that work with less.',
  'split-zone': 'Split the zone in two, or lay emitters with less flow.',
  stagger: 'Run the zones one after another, or on different days.',
  'more-days': 'Water on more days, with fewer minutes on each.',
  'use-less': 'Water less, or ask for a larger allowance.',
  'larger-tank': 'Set up a larger tank, or top up from the house supply.',
  'closer-emitters': 'Lay emitters closer together.',
  'uphill-side': 'Move the line to the uphill side of the plants.',
  'fill-climate': 'Take a published table, or type or paste the months of a weather station nearby.',
};

const severity: Readonly<Record<NoticeSeverity, string>> = { danger: 'Urgent', warning: 'Check this', note: 'Note' };

/** How many notices of a severity there are, for the title. */
const counted: Readonly<Record<NoticeSeverity, (format: Format, notices: number) => string>> = {
  danger: ({ count }, notices) => count(notices, { other: 'urgent' }),
  warning: ({ count }, notices) => count(notices, { other: 'to check' }),
  note: ({ count }, notices) => count(notices, { one: 'note', other: 'notes' }),
};

export const notices = {
  title: ({ list }: Format, counts: readonly string[]) => `Attention: ${list(counts)}`,
  calmTitle: 'Nothing needs attention',
  calm: 'Every planting gets what it needs, and little more.',
  counted,
  severity,
  someWeeks: ({ count, days }: Format, weeks: number, first: number, last: number) =>
    `${count(weeks, WEEKS)} in ${days(first, last)}`,
  show: (where: string) => `Show it: ${where}`,
  fillClimate: 'Fill in the climate',
  more: ({ number }: Format, count: number) => `${number(count)} more`,
  whatToDo: 'What to do',
  done: (what: string) => `Done: ${what}.`,
  undo: 'Undo',
  undone: (what: string) => `Undone: ${what}.`,
  sentences,
  /** What to do about a notice. */
  remedies,
  /** A change that mends a notice at one press. */
  fixes: {
    'open-zone': 'Open again',
    'use-computed': 'Use computed minutes',
    'keep-instead': 'Water a little every week',
  } satisfies Readonly<Partial<Record<NoticeRemedy, string>>>,
};

export const noticesWords = area('notices', notices, {
  remedies: {
    'change-line':
      'Lay other emitters, closer together or further apart, or a second loop; or give it a zone of its own.',
  },
});
