/** What the trace says of the minutes that run, and of the water that they bring. */
import type { OfDay, OfLine } from '../../explain/trace/label-about.ts';
import type { MinutesSteps } from '../../explain/trace/step-kinds.ts';
import { area } from '../area.ts';
import type { Format } from '../format/format.ts';
import type { StepTexts } from '../trace-words.ts';
import { ofLine, onDay } from './trace-labels.ts';

const ROUNDING =
  'minutes = cycles × steps × timer step nearest to the minutes needed, fewest cycles first, a multiple of the runs a day, within the longest cycle and the starts a ' +
  'day; 0 below half a step; not less than needed where a planting’s Dr − minutes × net rate / 60 would not last';

const PER_DAY = 'minutes per watering day = minutes of the week / watering days';

const feedFormula = (meters: string): string =>
  `pressure = source − climb − friction, at least 0; friction in ${meters} of water: 10.67 × length × (Q / C)^1.852 / d^4.87, in m and m³/s`;

export const traceMinutes = {
  'line-feed': {
    title: (format: Format, of: Pick<OfLine, 'from'>) => `Pressure behind the solid line${ofLine(format, of)}`,
    says: 'What the way to the emitters leaves of the source’s pressure.',
    formula: feedFormula('meters'),
  },
  'line-flow': {
    title: (format: Format, of: OfLine) => `Flow of the line${ofLine(format, of)}`,
    says: {
      laid: 'All emitters of the line together, as printed: the pressure is not known.',
      full: 'All emitters of the line together: the pressure is enough for what is printed on them.',
      'at-pressure': 'What the emitters give at the pressure that is there, which falls along the line.',
      none: 'No line is laid here in this week, so irrigation brings it nothing.',
    },
    formula: {
      laid: 'flow = emitters × flow of one',
      full: 'flow = emitters × flow of one',
      'at-pressure': 'flow = emitters × their mean flow; of each: printed flow × (its pressure / that on the label)^x',
      none: 'flow = 0 without a line',
    },
  },
  'application-rate': {
    title: (format: Format, of: OfLine) => `Application rate${ofLine(format, of)}`,
    says: 'How deep an hour’s run would stand on the planting’s ground if nothing soaked in.',
    formula: 'rate = flow in an hour / ground; one liter on one square meter is one millimeter',
  },
  'net-rate': {
    title: (format: Format, of: OfLine) => `Net application rate${ofLine(format, of)}`,
    says: 'No line waters evenly. This part of its water counts as reaching all roots.',
    formula: 'net rate = rate × efficiency',
  },
  'minutes-asked': {
    title: onDay('minutes it asks for'),
    says: {
      'left-alone': 'It is not due for a refill, so it asks for no water.',
      'no-line': 'It needs water and no line brings it any, so no run would be long enough.',
      filling: 'It is filled at once.',
      bounds: 'The least on each watering day left that reaches the goal.',
      short: 'The least that reaches the goal where some days are short and use less.',
      alone:
        'Weather was read or forecast. A pot holds little more than a day’s water, so it asks for this morning alone.',
    },
    formula: {
      'left-alone': 'minutes = 0 where no refill is due',
      'no-line': 'no minutes where the net rate is 0',
      filling: 'minutes = 60 × depletion at the start / net rate',
      bounds:
        'minutes = the greatest, at least 0, of 60 × (Σ demand less rain − depletion to reach) / Σ net rate, from each day to the last; ' +
        'the first with its depletion, a later one with what roots grow into; of a pot with what it used less rain after the last run before',
      short:
        'minutes = the least by which Dr = max(0, Dr) + what roots grow into + demand less rain − minutes × net rate / 60, day by day, ends at the depletion to reach; ' +
        'ETc of short days is Ks × ETc, at most TAW − Dr',
      alone:
        'minutes = 60 × max(0, depletion at the start + demand less rain − used less rain after the last run) / net rate',
    },
  },
  'named-days': {
    title: onDay('days named for its shut-off'),
    says: {
      'hand-set': 'Its open days were set by hand.',
      none: 'It asks for no water that a run could bring.',
      filling: 'As many watering days as fill it, from the day due.',
      fewest: 'As few watering days as meet its need, spread over the week and ending on the last.',
    },
    formula: {
      'hand-set': 'as many watering days as were set by hand, evenly spread',
      none: 'none where it asks for no minutes, or no run is enough',
      filling:
        'watering days until depletion + demand less rain + what roots grow into − minutes × net rate / 60 is 0; else all',
      fewest: 'the fewest days on which it asks for no more than the zone runs; all where none do',
    },
  },
  'open-days': {
    title: 'Open days',
    says: {
      none: 'No day runs while its line is open.',
      'no-shut-off': 'No shut-off stands before it: it is open whenever the zone runs.',
      'shut-off': 'Its shut-off is open on these days.',
    },
    formula: 'open days = days its line is open on which the zone runs',
  },
  'minutes-open': {
    title: 'Minutes it is watered in the week',
    says: 'Its line runs this long, all open days together.',
    formula: 'minutes = sum over the days',
  },
  'irrigation-gross': {
    title: 'Gross irrigation',
    says: 'All that the line lets out over the planting’s ground.',
    formula: 'gross = minutes it is watered / 60 × rate, added up over the lines',
  },
  'irrigation-net': {
    title: 'Net irrigation',
    says: 'The part of it that counts as reaching all roots.',
    formula: 'net = minutes it is watered / 60 × net rate, added up over the lines',
  },
  'need-met': {
    title: 'Received against need',
    says: 'More than the whole need drains past the roots or stays in the soil for later.',
    formula: 'share = net irrigation / net need',
  },
  'zone-minutes': {
    title: onDay('minutes needed'),
    says: {
      thirstiest:
        'All lines of the zone run together, as long as its thirstiest planting asks. One behind a shut-off does not ask, and may go short.',
      'area-weighted':
        'All lines of the zone run together, for as long as brings all plantings together what they need together.',
      planting: 'All lines of the zone run together, as long as the planting named in the plan asks.',
    },
    formula: {
      thirstiest: 'minutes = the greatest of the minutes asked for',
      'area-weighted': 'minutes = Σ (minutes asked for × volume of a minute) / Σ volume of a minute',
      planting: 'minutes = the minutes that the named planting asks for',
    },
  },
  'minutes-per-day': {
    title: ({ weekday }: Format, { day }: Partial<OfDay>) =>
      day === undefined ? 'Minutes per watering day' : `${weekday(day)}, minutes that run`,
    says: {
      nearest: 'Rounded to the nearest that the timer can be set to, in equal cycles where the soil needs pauses.',
      up: 'Rounded up, so that a planting lasts until its next watering.',
      skipped: 'Skipped: less than half a step is needed, and all last until their next watering.',
      idle: 'No planting that decides asks for water.',
      'hand-set': 'Set by hand, and used as it is: it wins over the computed minutes.',
      run: 'What was really run wins over everything else.',
      'run-by-day': 'What was really run wins over everything else: the longest day.',
      closed: 'Closed for the week by hand: nothing runs.',
    },
    formula: {
      nearest: ROUNDING,
      up: ROUNDING,
      skipped: ROUNDING,
      idle: ROUNDING,
      'hand-set': PER_DAY,
      run: PER_DAY,
      'run-by-day': 'the greatest of the days',
      closed: 'minutes = 0',
    },
  },
  'minutes-cut': {
    title: ({ weekday }: Format, { day }: OfDay) => `${weekday(day)}, minutes that a cut leaves`,
    says: 'Water is cut this week: off the zones last in order first, found on its first day.',
    formula: 'minutes = minutes per watering day × (1 − share that is cut), down to whole steps of the timer',
  },
  cycles: {
    title: 'Cycles of a watering day',
    says: 'Where water comes faster than the soil takes it in, the run is split, to soak in between.',
    formula: {
      settable:
        'cycles = the fewest equal ones of whole steps within the longest cycle and the starts a day, a multiple of the runs a day',
      between:
        'cycles = minutes per watering day / longest cycle, rounded up, within the starts a day, the same for each run of the day',
    },
  },
  minutes: {
    title: 'Minutes of the week',
    says: {
      'one-number': 'One number stands on all days that run.',
      'by-day': 'All days together.',
      garden: 'All zones, one after the other.',
    },
    formula: {
      'one-number': 'minutes = minutes per watering day × days that run',
      'by-day': 'sum over the days',
      garden: 'sum over the zones',
    },
  },
  flow: {
    title: 'Flow while it runs',
    says: 'All lines that are open this week, running together.',
    formula: 'flow = sum over the open lines',
  },
} satisfies Partial<StepTexts<MinutesSteps>>;

export const traceMinutesWords = area('traceMinutes', traceMinutes, {
  'line-feed': { formula: feedFormula('metres') },
  'application-rate': {
    formula: 'rate = flow in an hour / ground; one litre on one square metre is one millimetre',
  },
});
