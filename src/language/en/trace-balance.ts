/** What the trace says of the days of the balance: all of the ground as one, two parts of it, or pots. */
import type { OfDay, OfPart } from '../../explain/trace/label-about.ts';
import type { CheckSteps } from '../../explain/trace/step-kinds.ts';
import { area } from '../area.ts';
import type { Format } from '../format/format.ts';
import type { StepTexts } from '../trace-words.ts';
import { onDay } from './trace-labels.ts';

const EXCESS = 'a day’s excess = max(0, rain + irrigation − used − depletion)';
const LEACHED = '; what passes straight through is added';
const NOTHING_DRAINED = 'On no day came more than the soil could hold.';

const SHORT = 'a day is short where Dr at its start − rain − irrigation is beyond RAW';
const SHORT_PART = 'a day is short where Dr at its start − what came is beyond RAW in each part that roots are in';
const SHORT_POT = 'a day is short where less was used than ETc';

const POT_DAY =
  'in each of as many equal parts as the day has runs: Dr = max(0, Dr − irrigation) − rain, then Dr = max(0, Dr + used); used, from Dr or ' +
  '0 = the lesser of ETc and RAW − Dr, and of the rest (TAW − the greater of Dr and RAW) × (1 − e^(−rest / (TAW − RAW)))';

const DRAWN =
  'demand × share from each part while its RAW − Dr lasts, Dr being that at the start − what came; what is lacking comes from what the ' +
  'other still has; what neither has, × Ks of each; never more than TAW − Dr';

const PART_TITLES = { wetted: 'the wetted part at the end', dry: 'the part that stays dry at the end' };

export const traceBalance = {
  leached: {
    title: 'Irrigation that passes straight through',
    says: 'This share of each run drains at once and carries salt away. The irrigation of each day below is the rest.',
    formula: 'passed = leaching fraction × net irrigation',
  },
  'short-days': {
    title: 'Days short of water',
    says: {
      none: 'After what came, the soil is on no day drier than the plants can bear. The driest is shown.',
      some: 'On days when the soil is too dry after what came, the plants use less than they would.',
      'part-none': 'On every day one part of the ground its roots are in has water within easy reach.',
      'part-some': 'On days when both parts are too dry, the plants use less than they would.',
      'pot-none': 'On every day its pots had all that the plants would use.',
      'pot-some': 'On days when its pots ran dry, the plants used less than they would.',
    },
    formula: {
      none: SHORT,
      some: SHORT,
      'part-none': SHORT_PART,
      'part-some': SHORT_PART,
      'pot-none': SHORT_POT,
      'pot-some': SHORT_POT,
    },
  },
  used: {
    title: 'Water used',
    says: 'What the plants took up: their whole demand, unless they were short.',
    formula: {
      one: 'used = demand − what short days kept back: ETc − Ks × ETc, or to the water there; Ks = (TAW − Dr) / (TAW − RAW) beyond RAW, else 1; Dr after what came',
      part: 'used = Σ wetted share × drawn from the wetted part + (1 − wetted share) × drawn from the other',
      pot: 'used = sum over the days',
    },
  },
  'store-day': {
    title: ({ weekday }: Format, { day, part }: OfDay & OfPart) => `${weekday(day)}, ${PART_TITLES[part]}`,
    says: {
      shared:
        'Each part gives its share of the day’s use while it has water within easy reach; the other gives the lack. Rain falls on both, irrigation on the wetted part alone.',
      alone: 'Young roots are in the wetted part alone. Rain falls on both parts, irrigation on that one.',
    },
    formula: {
      shared: `Dr end = max(0, Dr start − rain − irrigation of the wetted part + drawn); drawn: ${DRAWN}`,
      alone:
        'Dr end = max(0, Dr start − rain − irrigation of the wetted part + drawn); drawn of the wetted part = the lesser of Ks × ETc / share and TAW − Dr, Dr after what came; of the other 0',
    },
  },
  'day-balance': {
    title: onDay('depletion at the end'),
    says: {
      one: 'Rain and irrigation fill, the day’s use comes off, and what is then beyond full drains.',
      part: 'Both parts of the ground together.',
      pot: 'Each run fills the pots, and what is beyond full drains at once. Then rain falls while the plants drink, and what is beyond full at the end drains.',
    },
    formula: {
      one: 'Dr end = max(0, Dr start − rain − irrigation + used)',
      part: 'Dr end = wetted share × Dr of the wetted part + (1 − wetted share) × Dr of the other',
      pot: POT_DAY,
    },
  },
  'irrigation-drained': {
    title: 'Irrigation that drained past the roots',
    says: {
      none: NOTHING_DRAINED,
      some: 'More came than the soil could hold, even without the rain, which drains first.',
      part: 'More came to the wetted part than it could hold, even without the rain, which drains first.',
      pot: 'What a run brings beyond what its pots lack drains at once.',
    },
    formula: {
      none: `${EXCESS}${LEACHED}`,
      some: `${EXCESS}; irrigation drained = the excess beyond the day’s rain, summed${LEACHED}`,
      part: `${EXCESS} of the wetted part; irrigation drained = wetted share × the excess beyond the day’s rain, summed${LEACHED}`,
      pot: `irrigation drained = max(0, irrigation − Dr), summed${LEACHED}; ${POT_DAY}`,
    },
  },
  'rain-drained': {
    title: 'Rain that drained past the roots',
    says: {
      none: NOTHING_DRAINED,
      some: 'More came than the soil could hold. Rain drains first.',
      part: 'More came to one part of the ground than it could hold. Rain drains first.',
      pot: 'Rain drains that the plants do not drink and the mix cannot hold.',
    },
    formula: {
      none: EXCESS,
      some: `${EXCESS}; rain drained = the lesser of the excess and the day’s rain, summed`,
      part: `${EXCESS} of each part; rain drained = the lesser of the excess and the day’s rain, × the share of each, summed`,
      pot: `rain drained = max(0, −(Dr + used)), summed; ${POT_DAY}`,
    },
  },
} satisfies Partial<StepTexts<CheckSteps>>;

export const traceBalanceWords = area('traceBalance', traceBalance);
