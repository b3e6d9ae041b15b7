/** What the trace says of the water that a planting needs. */

import type { Names } from '../../engine/names.ts';
import type { RainMethod } from '../../engine/rain/effective-rain.ts';
import type { NeedSteps } from '../../explain/trace/step-kinds.ts';
import { area } from '../area.ts';
import type { Format } from '../format/format.ts';
import type { StepTexts } from '../trace-words.ts';
import { onDay } from './trace-labels.ts';

const EXPECTED_SAYS =
  'Until the week’s last watering, by usual weather and the forecast: what is read later is not known yet.';

const DUE = 'Dr > max(0, RAW − demand until its day − what roots grow into)';

const CROP_SAYS = 'A crop drinks more as its leaves spread, and less as it ripens.';

const RAIN_METHODS: Readonly<Record<RainMethod, string>> = {
  tr21: 'USDA TR-21',
  fao: 'FAO monthly formula',
  'scs-simplified': 'simplified SCS formula',
  fraction: 'a fixed share',
  balance: 'what roots keep',
};

export const traceNeed = {
  'landscape-coefficient': {
    title: 'Landscape coefficient',
    says: 'How thirsty the plants are, how densely they stand and how exposed the place is.',
    formula: 'KL = ks × kd × kmc',
  },
  'crop-coefficient': {
    title: ({ name }: Format, { plant }: { readonly plant: Names }) => `Crop coefficient: ${name(plant)}`,
    says: {
      annual: CROP_SAYS,
      perennial: `${CROP_SAYS} One that stays starts anew every year.`,
    },
    formula:
      'Kc = Kc ini in the first stage; rising in a straight line to Kc mid; Kc mid; in a straight line to Kc end; ' +
      '0 outside the stages, which begin again with day 1 where growth starts anew; result = mean of the days in the ground',
  },
  establishing: {
    title: 'Establishing',
    says: 'Young roots reach little soil, so until its date the planting gets more than later.',
    formula: 'result = (establishing days × factor + other days × 1) / days in the ground',
  },
  demand: {
    title: 'Demand',
    says: 'What the planting would use in these days if it never went short of water.',
    formula: 'ETc = K × ETo, summed over the days in the ground; K = coefficient × mulch factor × establishing factor',
  },
  'rain-share': {
    title: ({ month }: Format, { month: index, variant }: { readonly month: number; readonly variant: RainMethod }) =>
      `Share of ${month(index)}’s rain that counts: ${RAIN_METHODS[variant]}`,
    says: {
      tr21: 'Of much rain less is of use; thirsty plants and deep soil can use more of it.',
      fao: 'A fixed part of the month’s rain counts, after a first part that is lost.',
      'scs-simplified': 'Nearly all of a little rain counts, less of much.',
      fraction: 'The plan counts one fixed share of all rain.',
      balance: 'The planting’s own balance, day by day through many years, tells what its roots keep.',
    },
    formula: {
      tr21:
        'share = Pe / P; Pe = SF (1.2525 P^0.82416 − 2.9352) × 10^(0.00095512 ETc), in mm, at least 0, at most P and ETc; ' +
        'SF = 0.531747 + 0.295164 D − 0.057697 D² + 0.003804 D³, D in inches, from 0.75 to 7; D = mean RAW, at most mean ETc of a day × 7 / watering days',
      fao: 'share = Pe / P; Pe = 0.8 P − 25 above 75 mm, else 0.6 P − 10, at least 0 (mm)',
      'scs-simplified': 'share = Pe / P; Pe = P (125 − 0.2 P)/125 up to 250 mm, above it 125 + 0.1 P (mm)',
      fraction: 'share = Pe / P; Pe = P × share that counts',
      balance: 'share = rain kept / rain, from 0 to 1',
    },
  },
  'effective-rain': {
    title: 'Rain that soaks in',
    says: 'Usual rain counts by the share of its month. Measured rain soaks in, unless so slight that it dries off.',
    formula:
      'effective rain = (normals × share of the month + a day’s rain, where it is at least 0.2 × its ETo, × (1 − runoff)) × rain factor',
  },
  'available-water': {
    title: 'Available water in the root zone',
    says: {
      soil: 'The soil around the roots holds this much that plants can draw.',
      pot: 'The mix in its pots holds this much that plants can draw, as a depth over its ground.',
    },
    formula: {
      soil: 'TAW = available water of the soil × root depth',
      pot: 'TAW = mix in all its pots × share that is water for plants / ground; 1 L on 1 m² is 1 mm',
    },
  },
  'readily-available-water': {
    title: 'Readily available water',
    says: 'The soil may dry this far before the plants suffer.',
    formula: {
      fixed: 'RAW = p × TAW',
      adjusted: 'RAW = p’ × TAW; p’ = p + 0.04 (5 − ETc in mm), from 0.1 to 0.8',
    },
  },
  'depletion-start': {
    title: 'Depletion at the week’s start',
    says: {
      'first-day': 'This is how dry the soil is taken to be on the planting’s first day.',
      'carried-over': 'The soil starts the week as the week before left it.',
    },
    formula: {
      'first-day': 'Dr = starting depletion × p × TAW',
      'carried-over': 'Dr = depletion at the end of the week before',
    },
  },
  'expected-demand': {
    title: onDay('expected demand'),
    says: EXPECTED_SAYS,
    formula: 'ETc = K × ETo, summed over the days',
  },
  'expected-rain': {
    title: onDay('expected rain'),
    says: EXPECTED_SAYS,
    formula: 'rain = (normals × share of the month + forecast rain that soaks in) × rain factor',
  },
  'refill-expected': {
    title: onDay('when it will be due'),
    says: 'Whoever opens its shut-off must know on its first watering morning.',
    formula: `from day to day Dr = max(0, Dr + demand less rain) + what roots grow into; the first watering morning on which ${DUE}`,
  },
  'refill-due': {
    title: onDay('due for a refill?'),
    says: {
      morning: 'It is due where it would pass its allowed depletion before its next watering.',
      expected: 'It is due on the day expected.',
      still: 'It became due before, and has not been filled.',
    },
    formula: {
      morning: `yes where ${DUE}`,
      expected: 'yes on the expected day where Dr > 0',
      still: 'yes where Dr > 0.1 × depletion when it became due',
    },
  },
  refilled: {
    title: onDay('filled?'),
    says: 'It stays due until it is filled.',
    formula: 'yes where Dr start − irrigation, or Dr end, is at most 0.1 × depletion when it became due',
  },
  'target-depletion': {
    title: 'Target depletion',
    says: {
      set: 'Watering leaves this much room for rain.',
      leaching: 'No room is left for rain where water is to drain and carry salt away.',
    },
    formula: { set: 'T = target share × p × TAW', leaching: 'T = 0 with a leaching fraction' },
  },
  goal: {
    title: 'Depletion to reach',
    says: {
      room: 'The week’s last watering leaves the target, or less, to last until the next.',
      establishing: 'Establishing plants are filled.',
      pot: 'A pot is full after its last run of a day, and ends the day with what was used since, less the rain.',
    },
    formula: {
      room: 'depletion to reach = max(0, the lesser of T and RAW − demand until its day − what roots grow into)',
      establishing: 'depletion to reach = 0 until that date',
      pot: 'depletion to reach = the greatest of what is used less rain after the last run, and the lesser of T and RAW − demand until its day; T = 0 while establishing',
    },
  },
  need: {
    title: 'Net need',
    says: {
      watered: 'This much water must reach the roots in this week, beyond the rain.',
      filled: 'What was missing when it was due.',
      'part-watered': 'This much water must reach the roots in the wetted part, as a depth over all of the ground.',
      'part-filled': 'What was missing in the wetted part when it was due, as a depth over all of the ground.',
      'left-alone': 'It is left alone this week: the soil still holds enough.',
      'no-watering-day': 'No watering day of the week falls into its days in the ground.',
      resting: 'It asks for no water on any watering day of the week.',
    },
    formula: {
      'part-watered':
        'from day to day Dr = max(0, Dr) + what roots grow into + demand of the wetted part less rain; need = wetted share × max(0, Dr on the last watering day − depletion to reach)',
      'part-filled': 'need = wetted share × sum of the depletions at the start of the days',
      resting: 'need = 0 while it asks for no water',
      watered:
        'from day to day Dr = max(0, Dr) + what roots grow into + demand less rain; need = max(0, Dr on the last watering day − depletion to reach)',
      filled: 'sum of the depletions at the start of the days',
      'left-alone': 'need = 0 where no refill is due',
      'no-watering-day': 'need = 0 without a watering day in the ground',
    },
  },
} satisfies Partial<StepTexts<NeedSteps>>;

export const traceNeedWords = area('traceNeed', traceNeed);
