/** What the list of notices says: around its notices, one sentence for each kind, and what to do. Names are data: any name fits. */
import type {
  LeftBehindFigures,
  NoticeFigures,
  NoticeKind,
  NoticeRemedy,
  OverFigures,
} from '../../explain/notices/notice.ts';
import type { NoticeSeverity } from '../../explain/notices/severity.ts';
import type { Shortage } from '../../explain/notices/shortage.ts';
import { area } from '../area.ts';
import type { Format } from '../format/format.ts';

const MINUTES_AN_HOUR = 60;
const EVERY_DAY = 7;
const DAYS = { one: 'day', other: 'days' };
const STARTS = { one: 'start', other: 'starts' };
const WEEKS = { one: 'week', other: 'weeks' };

/** Goes on after the name of the planting, zone or garden and a colon. `groups`: names of zones that can run together. */
type Sentence<Kind extends NoticeKind> = (
  format: Format,
  figures: NoticeFigures[Kind],
  groups: readonly (readonly string[])[],
) => string;

type Sentences = { readonly [Kind in NoticeKind]: Sentence<Kind> };

/** How badly something goes short. */
function lack({ count, quantity, percent }: Format, { shortDays, unmetLitres, demandLitres }: Shortage): string {
  const volume = quantity(unmetLitres, 'volume');
  if (shortDays === 0 || volume === quantity(0, 'volume')) return 'drier than planned, but not short of water.';
  const share = percent(Math.max(LEAST_SHARE, unmetLitres / demandLitres));
  return `short of water on ${count(shortDays, DAYS)}: ${volume}, ${share} of what it uses.`;
}

function leftBehind({ duration }: Format, { minutesAsked, minutesPerDay }: LeftBehindFigures, where: string): string {
  return minutesAsked > minutesPerDay
    ? `Needs ${duration(minutesAsked)} ${where} ${duration(minutesPerDay)}.`
    : 'A deep watering is due, and the zone runs too little for it.';
}

/** A smaller share is told as this. */
const LEAST_SHARE = 0.01;

function drains({ quantity, percent }: Format, { drainedLitres, appliedLitres, drainedShare }: OverFigures): string {
  return `${percent(drainedShare)} of its water is too much and drains past the roots: ${quantity(drainedLitres, 'volume')} of ${quantity(appliedLitres, 'volume')}.`;
}

const told = (matter: string, cause: string) => `${matter} ${cause}`;

const sentences: Sentences = {
  'no-climate': ({ count }, { etoMonths, temperatureMonths, days, otherDays }) =>
    temperatureMonths > 0
      ? `reference ET is 0 on ${count(days, DAYS)}: its temperatures give none. Right where it is that cold; otherwise a temperature is wrong.`
      : otherDays > 0 || etoMonths > 0
        ? `reference ET is 0 on ${count(days, DAYS)}, as if plants used no water. Right while the ground is frozen; otherwise a month is missing.`
        : 'its climate is not filled in yet, so nobody can say what plants use. No minutes here does not mean that they need no water.',
  'no-line': (format, figures) =>
    figures.neededLitres > 0
      ? `no line brings the ${format.quantity(figures.neededLitres, 'volume')} of irrigation that it needs.`
      : told(lack(format, figures), 'No line brings it water.'),
  'too-long': ({ duration }, { minutesPerDay, windowMinutes }) =>
    `needs ${duration(minutesPerDay)} a watering day; water may run for ${duration(windowMinutes)}.`,
  closed: (format, shortage) => told(lack(format, shortage), 'The zone is closed by hand.'),
  'short-by-hand': (format, shortage) =>
    told(lack(format, shortage), 'Minutes or open days that were set by hand are too few.'),
  'short-as-run': (format, shortage) => told(lack(format, shortage), 'What was run was too little.'),
  'cut-short': (format, shortage) => told(lack(format, shortage), 'Its zone gave up water in these weeks.'),
  'cut-not-met': ({ quantity }, { worstWeekLitres }) =>
    `the cut asks for up to ${quantity(worstWeekLitres, 'volume')} a week more than its zones can give up.`,
  restricted: (format, shortage) =>
    told(lack(format, shortage), 'A watering restriction leaves no day on which water may run.'),
  'beyond-timer': (format, figures) => {
    const { count, duration, minutes } = format;
    const { minutesAsked, mostMinutes, startsADay, cycleMinutes } = figures;
    const asked = `The zone needs ${duration(minutesAsked)} a watering day; its timer can run ${duration(mostMinutes)}`;
    if (cycleMinutes === undefined) return told(lack(format, figures), `${asked}.`);
    const why = `${count(startsADay, STARTS)} of at most ${minutes(cycleMinutes)}, since more would run off`;
    return told(lack(format, figures), `${asked}: ${why}.`);
  },
  'shut-off-short': (format, figures) =>
    told(lack(format, figures), leftBehind(format, figures, 'a watering day behind its shut-off; the zone runs')),
  'left-behind': (format, figures) =>
    told(lack(format, figures), leftBehind(format, figures, 'a watering day; by its rule the zone runs')),
  'few-days': (format, figures) => {
    const { fewestDays, mostDays } = figures;
    if (fewestDays === EVERY_DAY)
      return told(lack(format, figures), 'The soil dries out within a day, though it is watered every day.');
    const days = `${fewestDays === mostDays ? '' : `${format.number(fewestDays)} to `}${format.count(mostDays, DAYS)}`;
    return told(lack(format, figures), `The soil dries out between waterings on ${days} a week.`);
  },
  'dry-spell': (format, shortage) => told(lack(format, shortage), 'The days were hotter or drier than expected.'),
  short: (format, shortage) => lack(format, shortage),
  'crop-early': ({ count }, { daysEarly }) =>
    `${count(daysEarly, DAYS)} in the ground before its planting day, with no water planned.`,
  'crop-past': ({ count }, { daysPast }) =>
    `${count(daysPast, DAYS)} in the ground after its last growth stage, with no water planned.`,
  'out-of-season': () => 'in the ground on no day of this season, so never watered.',
  over: (format, figures) => drains(format, figures),
  'over-by-hand': (format, figures) => told(drains(format, figures), 'More was set by hand than computed.'),
  'step-too-long': ({ minutes }, { timerStepMinutes, longestCycleMinutes }) =>
    `the timer’s shortest run is ${minutes(timerStepMinutes)}; water runs off after ${minutes(longestCycleMinutes)}.`,
  'hand-set': ({ duration }, { minutes, computedMinutes }) =>
    `set by hand to ${duration(minutes)} in all; computed: ${duration(computedMinutes)}.`,
  'line-too-long': ({ quantity }, { runLengthM, longestRunM, inletPressureKpa, leastPressureKpa }) =>
    `its line runs ${quantity(runLengthM, 'length')}; its pressure carries ${quantity(longestRunM, 'length')}. ${quantity(inletPressureKpa, 'pressure')} at its start, ${quantity(leastPressureKpa, 'pressure')} at its weakest emitter.`,
  'pressure-low': ({ quantity }, { inletPressureKpa }) =>
    `${quantity(inletPressureKpa, 'pressure')} at the start of its line is too low even for the first emitter.`,
  'flow-below-label': ({ quantity }, { flowLph, labelLph, pressureKpa }) =>
    `its lines give ${quantity(flowLph, 'emitterFlow')} at ${quantity(pressureKpa, 'pressure')}; their label says ${quantity(labelLph, 'emitterFlow')}. Its minutes count on what they give.`,
  'flow-too-fast': ({ quantity }, { velocityMs, limitMs, flowLph, insideDiameterMm, widerDiameterMm }) =>
    `${quantity(flowLph / 60, 'supplyFlow')} through a tube of ${quantity(insideDiameterMm, 'bore')} runs ${quantity(velocityMs, 'length')} a second; it should run no more than ${quantity(limitMs, 'length')}. It takes one of ${quantity(widerDiameterMm, 'bore')} inside.`,
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
  'pot-dries-out': ({ quantity, duration, number }, { heldLitres, usedLitres, hours, runsADay, wateringDays }) =>
    `this pot cannot last from one watering to the next: it holds ${quantity(heldLitres, 'volume')} that plants draw with ease, and they use ${quantity(usedLitres, 'volume')} in ${duration(MINUTES_AN_HOUR * hours)}. Watered ${number(runsADay)} × a day, ${number(wateringDays)} days a week.`,
  'wetted-too-little': ({ percent, quantity }, { wettedShare, wantedShare, widthM, apartM }) =>
    apartM === undefined
      ? `too few emitters for its crowns: they wet ${percent(wettedShare)} of the ground; at least ${percent(wantedShare)} is good practice. One wets ${quantity(widthM, 'spacing')} across at the roots.`
      : `its rows stand too far apart: about ${quantity(apartM, 'spacing')}, and one wets ${quantity(widthM, 'spacing')} across. Only ${percent(wettedShare)} of the bed gets water.`,
  'line-downhill': () => 'its line lies on the downhill side of the plants, so water runs away from the roots.',
};

const remedies: Readonly<Record<NoticeRemedy, string>> = {
  'lay-line': 'Lay a line with emitters to it, and add the line to the planting.',
  'change-line':
    'Lay other emitters, closer together or farther apart, or a second loop; or give it a zone of its own.',
  'open-zone': 'Open the zone again in these weeks, or water by hand.',
  'use-computed': 'Use the computed minutes unless you had a reason.',
  'cut-order':
    'If it matters more than others, move its zone forward in line, or let it keep its water. Mulch and shade make water last.',
  'cut-kept':
    'Let a zone that keeps its water give some up, or set fewer minutes where you set them by hand. Else ask for a smaller cut.',
  'ask-restriction':
    'Ask those who set the restriction what is allowed by hand, or for new plants. Mulch and shade make water last.',
  'split-run': 'Water on more days, so that each run is shorter, or split the zone in two.',
  'wet-more': 'Add rows or emitters until the wet ground meets, or lay emitters that give more.',
  'bigger-pot':
    'Water it more often, or more times a day. Else move it to a bigger pot, shade the pot, or mulch its top.',
  'smaller-step': 'Use a timer that can be set to shorter runs, or lay emitters with less flow.',
  'nothing-now': 'Nothing to change: the plan makes up for it.',
  'check-days': 'Check the planting day and the days in the ground.',
  'shorten-run': 'Close the line into a loop, feed it in the middle, cut it in two, or space its emitters wider.',
  'more-pressure':
    'Read a gauge at the line, after any regulator, while water runs, and enter it. Then fit a regulator that gives more, or lay emitters that work with less.',
  'wider-tube':
    'Lay wider tube there, feed it in the middle, close it into a loop, or share the flow between two tubes.',
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
  /** Over those in the fold that are about the same. */
  about: { broken: 'Goes short, or cannot work as set', wastesWater: 'Wastes water', goodToKnow: 'Good to know' },
  /** Of those `left` so many are shown next. */
  next: ({ number }: Format, next: number, left: number) =>
    next === left ? `Show the last ${number(next)}` : `Show ${number(next)} of the ${number(left)} others`,
  looking: 'Checking the whole garden…',
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
  } satisfies Readonly<Partial<Record<NoticeRemedy, string>>>,
};

export const noticesWords = area('notices', notices, {
  remedies: {
    'change-line':
      'Lay other emitters, closer together or further apart, or a second loop; or give it a zone of its own.',
  },
});
