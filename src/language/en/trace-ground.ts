/** What the trace says of mulch, pots, ground that is wetted in part, roots that grow, and rest. */
import type { OfLine, OfMonth } from '../../explain/trace/label-about.ts';
import type { KcStage, MinutesSteps, NeedSteps } from '../../explain/trace/step-kinds.ts';
import { area } from '../area.ts';
import type { Format } from '../format/format.ts';
import type { StepTexts } from '../trace-words.ts';
import { ofLine, onDay } from './trace-labels.ts';

const STAGES: Readonly<Record<KcStage, string>> = { initial: 'Kc ini', mid: 'Kc mid', end: 'Kc end' };

const ORGANIC_SAYS = 'Mulch keeps the soil under it from drying off; what the leaves use stays.';
const PLASTIC_SAYS = 'A sheet keeps the soil under it from drying off.';
const REST_FORMULA = 'days of the week in the ground from the first to the last day of rest';

const need = {
  'mulch-factor': {
    title: 'Mulch factor',
    says: { organic: ORGANIC_SAYS, plastic: PLASTIC_SAYS },
    formula: {
      organic: 'factor = 1 − 0.05 × 0.5 × share under mulch',
      plastic: 'factor = 1 − what a sheet takes off',
    },
  },
  'mulched-kc': {
    title: (_: Format, { stage }: { readonly stage: KcStage }) => `${STAGES[stage]} under mulch`,
    says: {
      'organic-first': ORGANIC_SAYS,
      organic: ORGANIC_SAYS,
      'plastic-first': PLASTIC_SAYS,
      plastic: PLASTIC_SAYS,
    },
    formula: {
      'organic-first': 'Kc ini = Kc of bare ground × (1 − 0.5 × share under mulch)',
      organic: 'Kc = Kc of bare ground × (1 − 0.05 × 0.5 × share under mulch)',
      'plastic-first': 'Kc ini = Kc of bare ground, at most 0.10',
      plastic: 'Kc = Kc of bare ground × (1 − what a sheet takes off)',
    },
  },
  rest: {
    title: 'Days on which it asks for no water',
    says: {
      leafless: 'It has no leaves in these months, so it is taken to use no water.',
      frozen: 'The ground is frozen in these months, so no water is asked for.',
      'dry-down': 'It is left to dry before harvest; it uses what is there.',
    },
    formula: { leafless: REST_FORMULA, frozen: REST_FORMULA, 'dry-down': REST_FORMULA },
  },
  'rain-factor': {
    title: 'Rain factor',
    says: {
      pot: 'Rain falls into the openings of its pots, not on all the ground under its leaves.',
      plastic: 'No rain comes through the sheet.',
    },
    formula: {
      pot: 'factor = pots × π / 4 × width² × share that reaches the opening / ground',
      plastic: 'factor = 0 under a sheet',
    },
  },
  'rain-there': {
    title: 'Rain that reaches it',
    says: 'As a depth over its ground.',
    formula: 'rain there = rain × rain factor',
  },
  'root-depth': {
    title: 'Root depth of the week',
    says: 'Roots of an annual crop grow with it, and reach more soil from week to week.',
    formula:
      'Zr = depth at planting + (full depth − depth at planting) × (day of growth − initial stage) / development, from the one to the other',
  },
  soak: {
    title: 'Soak before planting',
    says: 'The ground is filled once before its first day. This water is not in the season’s sums.',
    formula: 'soak = missing before the soak × ground; 1 L on 1 m² is 1 mm',
  },
  'wetted-demand': {
    title: onDay('what the wetted part is expected to give'),
    says: 'The part that stays dry gives its share while it has any; the wetted part gives the rest.',
    formula:
      'from day to day the dry part gives the lesser of ETc and RAW − Dr + rain, nothing where Dr is beyond RAW or roots are in the wetted part alone; ' +
      'the wetted part ETc + (1 − share) / share × (ETc − what the dry part gives); summed from this morning on',
  },
} satisfies Partial<StepTexts<NeedSteps>>;

const minutes = {
  'wetted-width': {
    title: (format: Format, of: OfLine) => `Width that one emitter wets${ofLine(format, of)}`,
    says: 'At the depth of the roots, in even soil. It hangs on the soil, the depth and the flow.',
    formula:
      'width = the handbook’s for 1 gph at the depth (coarse 1.5 ft at 2.5 ft and 2.5 ft at 5 ft, medium 3 and 4, fine 3.5 and 5; in a straight line ' +
      'between, × (depth / 2.5 ft)^0.35 above) × (q / 1 gph)^0.33',
  },
  'wetted-ground': {
    title: (format: Format, of: OfLine) => `Ground that it wets${ofLine(format, of)}`,
    says: {
      circles: 'Each emitter wets a circle.',
      strip: 'A strip along the line, or circles where the emitters stand apart.',
      all: 'Micro-spray wets all of the ground.',
    },
    formula: {
      circles: 'wetted = emitters × π / 4 × width²',
      strip: 'wetted = the lesser of emitters × π / 4 × width² and length × width',
      all: 'wetted = ground',
    },
  },
  'wetted-share': {
    title: 'Share of the ground that is wetted',
    says: {
      typed: 'As the plan has it. Irrigation fills this part alone; rain falls on all of it.',
      computed:
        'What its emitters wet at the depth of the roots. Irrigation fills this part alone; rain falls on all of it.',
    },
    formula: {
      typed: 'share = as set in the plan',
      computed: 'share = ground that its lines wet / ground, in hundredths, 0.05 to 1',
    },
  },
  'days-a-week': {
    title: ({ month }: Format, of: OfMonth) => `Days a week that fit, ${month(of.month)}`,
    says: 'How often the planting that needs it most wants water. The plan may say otherwise.',
    formula:
      'days a week = the fewest, spread over the days on which water may run, of which no two lie further apart than water at hand / use of a day, in whole days, at least 1; all where none fit',
  },
  'runs-a-day': {
    title: ({ month }: Format, of: OfMonth) => `Runs a day that fit, ${month(of.month)}`,
    says: {
      pot: 'What its pots hold within easy reach does not last a day.',
      ground: 'What young roots have within easy reach does not last a day.',
    },
    formula: {
      pot: 'runs a day = use of a day / RAW, rounded up, within the starts of the timer',
      ground: 'runs a day = use of a day / RAW, rounded up, at most 2, within the starts of the timer',
    },
  },
  'asked-rate': {
    title: (format: Format, of: Pick<OfLine, 'from'>) => `Rate by which its minutes are found${ofLine(format, of)}`,
    says: {
      part: 'All the water falls on the wetted part, so there it stands deeper.',
      leaching: 'Some of the water is to drain and carry salt away, so it is added to the need.',
      'part-leaching': 'All the water falls on the wetted part; some of it is to drain and carry salt away.',
    },
    formula: {
      part: 'rate = Σ net rate / wetted share',
      leaching: 'rate = Σ net rate × (1 − leaching fraction)',
      'part-leaching': 'rate = Σ net rate × (1 − leaching fraction) / wetted share',
    },
  },
} satisfies Partial<StepTexts<MinutesSteps>>;

/** Before any step, where nothing in the ground asks for water all week. */
const rest = {
  leafless: 'No run: no leaves in these months, so no water is asked for.',
  frozen: 'No run: the ground is frozen in these months, so no water is asked for.',
  'dry-down': 'No run: it is left to dry before harvest.',
};

/** Steps by the group that they stand in, and `rest`. */
export const traceGround = { need, minutes, rest };

export const traceGroundWords = area('traceGround', traceGround);
