/** What the trace says of the minutes that run, and of the water that they bring. */
import type { OfLine } from '../../explain/trace/label-kinds.ts';
import type { MinutesSteps } from '../../explain/trace/step-kinds.ts';
import { area } from '../area.ts';
import type { Format } from '../format/format.ts';
import type { StepTexts } from '../trace-words.ts';
import { ofLine } from './trace-labels.ts';

const STEPS_FORMULA =
  'steps = needed / timer step, rounded up; cycles = steps / (whole steps in the longest cycle, at least 1), rounded up';

export const traceMinutes = {
  'line-flow': {
    title: (_: Format, { line }: OfLine) => `Flow of the line${ofLine(line)}`,
    says: {
      laid: 'All emitters of the line together.',
      none: 'No line is laid here in this week, so irrigation brings it nothing.',
    },
    formula: { laid: 'flow = emitters × flow of one', none: 'flow = 0 without a line' },
  },
  'application-rate': {
    title: (_: Format, { line }: OfLine) => `Application rate${ofLine(line)}`,
    says: 'How deep an hour’s run would stand on the planting’s ground if nothing soaked in.',
    formula: 'rate = flow in an hour / ground; one liter on one square meter is one millimeter',
  },
  'net-rate': {
    title: (_: Format, { line }: OfLine) => `Net application rate${ofLine(line)}`,
    says: 'No line waters quite evenly. This part of its water counts as reaching the roots everywhere.',
    formula: 'net rate = rate × efficiency',
  },
  'minutes-asked': {
    title: 'Minutes it asks for per watering day',
    says: {
      nothing: 'It asks for no water this week.',
      'no-line': 'It needs water and no line brings it any, so no run would be long enough.',
      division: 'The zone would have to run this long on each watering day for this planting alone.',
      trial: 'The zone would have to run this long on each watering day for this planting alone.',
    },
    formula: {
      nothing: 'minutes = 0 where the need is 0',
      'no-line': 'no minutes where the rate is 0',
      division:
        'minutes = 60 × (depletion at the start + demand − rain − depletion to reach) / (net rate × watering days), at least 0',
      trial:
        'the least minutes with which the daily balance, Ks included, ends the last watering day at the depletion to reach; ' +
        'found by trying, below the least that would do if no day were short',
    },
  },
  'open-days': {
    title: 'Open days',
    says: {
      'zone-idle': 'The zone does not run this week.',
      'no-shut-off': 'No shut-off stands before it: it is open whenever the zone runs.',
      'hand-set': 'Its shut-off was set by hand.',
      'nothing-asked': 'It asks for no water this week, so its shut-off stays shut.',
      'no-line': 'No line brings it water, so its shut-off stays shut.',
      fewest:
        'Its shut-off is opened on as few of the zone’s watering days as its need allows, spread over the week and ending on the last.',
    },
    formula: {
      'zone-idle': 'open days = 0 where the zone does not run',
      'no-shut-off': 'open days = watering days in the ground',
      'hand-set': 'open days = days set by hand, at most the watering days',
      'nothing-asked': 'open days = 0 where it asks for no minutes',
      'no-line': 'open days = 0 where no run is long enough',
      fewest:
        'open days = the fewest with which the depletion reached is not above the depletion to reach; all of them where none do',
    },
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
    says: 'The part of it that counts as reaching the roots everywhere.',
    formula: 'net = gross × efficiency',
  },
  'need-met': {
    title: 'Received against need',
    says: 'More than the whole need drains past the roots or stays in the soil for later.',
    formula: 'share = net irrigation / net need',
  },
  'zone-minutes': {
    title: 'Minutes needed per watering day',
    says: {
      thirstiest:
        'All lines of the zone run together, so it runs as long as its thirstiest planting asks: nobody goes short.',
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
    title: 'Minutes per watering day',
    says: {
      computed: 'Rounded up to what the timer can be set to, in equal cycles where the soil needs pauses.',
      'hand-set': 'Set by hand, and used as it is: it wins over the computed minutes.',
      run: 'What was really run wins over everything else.',
      closed: 'Closed for the week by hand: nothing runs.',
    },
    formula: {
      computed: `${STEPS_FORMULA}; minutes = cycles × (steps / cycles, rounded up) × timer step`,
      'hand-set': 'minutes per watering day = minutes of the week / watering days',
      run: 'minutes per watering day = minutes of the week / watering days',
      closed: 'minutes = 0',
    },
  },
  cycles: {
    title: 'Cycles of a watering day',
    says: 'Where water comes faster than the soil takes it in, the run is split, and the soil has time to drink between.',
    formula: {
      computed: STEPS_FORMULA,
      given: 'cycles = minutes per watering day / longest cycle, rounded up; 0 where nothing runs',
    },
  },
  minutes: {
    title: 'Minutes of the week',
    says: { zone: 'All watering days together.', garden: 'All zones, one after the other.' },
    formula: { zone: 'minutes = minutes per watering day × watering days', garden: 'sum over the zones' },
  },
  flow: {
    title: 'Flow while it runs',
    says: 'All lines that are open this week, running together.',
    formula: 'flow = sum over the open lines',
  },
} satisfies StepTexts<MinutesSteps>;

export const traceMinutesWords = area('traceMinutes', traceMinutes, {
  'application-rate': {
    formula: 'rate = flow in an hour / ground; one litre on one square metre is one millimetre',
  },
});
