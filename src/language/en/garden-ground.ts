/** What the garden's forms say of ground and pots: what a planting grows in, what covers it, how far water spreads, when it rests. */
import type { MixId } from '../../engine/soil/potting-mixes.data.ts';
import { area } from '../area.ts';
import type { Format } from '../format/format.ts';

export const gardenGround = {
  more: 'Ground, pots, mulch and rest',
  growsIn: {
    label: 'Grows in',
    options: { ground: 'the ground', container: 'pots, boxes or baskets' },
  },
  container: {
    volume: {
      label: 'Potting mix in one',
      help: 'Fill one with water from a can that you can measure, up to where the mix stands.',
    },
    count: { label: 'How many', empty: 'one for each plant' },
    mix: {
      label: 'Potting mix',
      options: {
        potting: 'usual potting mix',
        bark: 'coarse, with much bark',
        peat: 'fine, with much peat',
      } satisfies Readonly<Record<MixId, string>>,
    },
    availableWater: {
      label: 'Water that the mix holds for plants',
      unit: '0.05–0.6',
      empty: 'as usual for the mix',
      help: 'As a share of its volume, for those who know it.',
    },
    opening: { label: 'Across its opening', empty: 'as wide as it is tall' },
    rainShare: {
      label: 'Share of the rain that gets in',
      unit: '0–1',
      help: '0 for what hangs under the eaves, 1 in the open.',
    },
  },
  mulchKind: {
    label: 'Mulch',
    options: { none: 'none', organic: 'bark, straw, leaves or compost', plastic: 'plastic sheet' },
  },
  cover: { label: 'Share of the ground under it', unit: '0–1', help: '1 where no bare soil is seen.' },
  wettedShare: {
    label: 'Share of the ground that is wetted',
    unit: '0.05–1',
    help: 'At the depth of the roots. Dig beside an emitter the day after a run and look how wide the soil is damp.',
    /** Worked out from emitters, soil and roots. */
    computed: ({ number }: Format, share: number) => `from its lines: ${number(share, 2)}`,
    unknown: 'from its lines',
  },
  /** Widths that one emitter of each line wets, m. */
  widths: ({ list, quantity }: Format, widthsM: readonly number[]) =>
    `At the depth of its roots an emitter wets ground ${list(widthsM.map((width) => quantity(width, 'spacing')))} wide.`,
  soak: {
    label: 'Soak the ground before its first day',
    help: 'For a bed laid out dry. Water it slowly until it is damp as deep as the roots will grow.',
  },
  soakNeeds: ({ quantity }: Format, litres: number) => `The soak takes about ${quantity(litres, 'volume')}.`,
  dryDownDays: {
    label: 'Dry-down before harvest',
    unit: 'days',
    empty: 'as usual for the crop',
    help: 'Last days in the ground without water, so that onions and garlic keep.',
  },
  leaflessMonths: {
    label: 'Months without leaves',
    help: 'It asks for no water in these months.',
  },
  trunk: {
    label: 'Across one trunk',
    empty: 'not measured',
    help: 'At breast height. The larger ground counts: under the canopy, or 24 trunks across.',
  },
  /** Which of the two counts; `trunksM`: 24 trunks across. */
  largerGround: {
    trunk: ({ quantity }: Format, trunksM: number) =>
      `24 trunks across are ${quantity(trunksM, 'diameter')}, wider than the canopy: that is its ground.`,
    canopy: ({ quantity }: Format, trunksM: number) =>
      `24 trunks across are ${quantity(trunksM, 'diameter')}; the canopy is wider: that is its ground.`,
  },
  availableWater: {
    label: 'Available water of the soil',
    unit: '0.02–0.4',
    empty: 'as usual for the soil',
    help: (format: Format) => availableHelp(format, 'meter'),
  },
  leachingFraction: {
    label: 'Extra water to wash salt down',
    unit: '0–0.5',
    empty: 'none',
    help: 'Share of the irrigation that is meant to drain, where water is salty. Ask your extension service.',
  },
};

function availableHelp({ reader, number }: Format, meter: string): string {
  const example = reader.units === 'us' ? `${number(1.8, 1)} in of water in a foot` : `150 mm of water in a ${meter}`;
  return `Depth of water that plants can draw from a depth of soil, for those who know it: ${number(0.15, 2)} is ${example}.`;
}

export const gardenGroundWords = area('gardenGround', gardenGround, {
  availableWater: { help: (format: Format) => availableHelp(format, 'metre') },
});
