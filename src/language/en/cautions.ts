/** The usual cautions of the trade (common practice, no source), each beside what it concerns and on every printed sheet. */
import type { CautionId } from '../../explain/notices/cautions.ts';
import { area } from '../area.ts';
import type { Format } from '../format/format.ts';

const full: Readonly<Record<CautionId, string>> = {
  backflow:
    'Where a line meets drinking water, fit the backflow preventer that your local code asks for, and have it tested as the code says. Not every kind allows a shut-off, a climb or a feeder for fertilizer after it: ask for one that suits yours.',
  tank: 'Water from a tank or roof is not for drinking. Mark its faucets, and keep its pipes apart from the drinking water.',
  digging: 'Have underground utilities marked before you dig: in the US, call 811.',
  codes:
    'Local codes, watering restrictions and the advice of a licensed professional come before anything shown here.',
  promise: 'These numbers are a plan, not a promise. Check them at the plant: look at the leaves, feel the soil.',
};

/** What is to be checked, within a list. */
const short: Readonly<Record<CautionId, string>> = {
  backflow: 'backflow protection',
  tank: 'marks on tank faucets',
  digging: 'underground utilities',
  codes: 'local codes',
  promise: 'the plant itself',
};

export const cautions = {
  title: 'Before you dig, connect or rely on this',
  beforeChange: 'Before you change the line',
  full,
  /** Beside what needs them; the whole of each stands at the foot. */
  checkFirst: ({ list }: Format, ids: readonly CautionId[]) =>
    `Check ${list(ids.map((id) => short[id]))} first (below).`,
};

const BRITISH_SHORT: Partial<Record<CautionId, string>> = { digging: 'buried services', tank: 'marks on tank taps' };

export const cautionWords = area('cautions', cautions, {
  full: {
    backflow:
      'Where a line meets drinking water, fit the backflow preventer that your local code asks for, and have it tested as the code says. Not every kind allows a shut-off, a climb or a feeder for fertiliser after it: ask for one that suits yours.',
    tank: 'Water from a tank or roof is not for drinking. Mark its taps, and keep its pipes apart from the drinking water.',
    digging: 'Have buried services located before you dig.',
  },
  checkFirst: ({ list }: Format, ids: readonly CautionId[]) =>
    `Check ${list(ids.map((id) => BRITISH_SHORT[id] ?? short[id]))} first (below).`,
});
