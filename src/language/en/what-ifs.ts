/** Changes that are tried together in a mixed zone, and kept beside the plan under a name. */
import { area } from '../area.ts';
import type { Format } from '../format/format.ts';

const CHANGES = { one: 'change', other: 'changes' };
const EMITTERS = { one: 'emitter', other: 'emitters' };
const SPRAYS = { one: 'micro-spray', other: 'micro-sprays' };
const TEES = { one: 'tee', other: 'tees' };
const END_CAPS = { one: 'end cap', other: 'end caps' };

export const whatIfs = {
  title: 'What-ifs beside the plan',
  about: 'Changes that you keep to compare. The plan itself stays as it is until you press “Do this”.',
  /** Columns of the comparison; figures are of the whole garden and season. */
  name: 'What-if',
  water: (unit: string) => `Water (${unit})`,
  shortDays: 'Days short',
  money: 'Water costs',
  parts: 'Parts to buy',
  asIs: 'The plan as it is',
  tried: 'With what you try',
  noParts: 'nothing',
  comparison: 'The whole garden over the season, days short added up over all plantings',
  trying: ({ count }: Format, changes: number) => `Only tried: ${count(changes, CHANGES)} together`,
  tryToo: 'Try it too',
  tryLabel: (what: string) => `Try it: ${what}`,
  takeBack: 'Take back the last change',
  nameIt: 'Name of this what-if',
  keepBeside: 'Keep beside the plan',
  begun: ({ number }: Format, count: number) => `What-if ${number(count)}`,
  show: 'Show',
  showLabel: (name: string) => `Show ${name}`,
  remove: 'Take out',
  removeLabel: (name: string) => `Take out ${name}`,
  doesNotFit: 'no longer fits the plan',
  toBuy: 'To buy',
  dripline: ({ quantity }: Format, lengthM: number, flowLph: number, spacingM: number) =>
    `${quantity(lengthM, 'length')} of dripline, ${quantity(flowLph, 'emitterFlow')} every ${quantity(spacingM, 'spacing')}`,
  emitters: ({ count, quantity }: Format, pieces: number, flowLph: number) =>
    `${count(pieces, EMITTERS)} of ${quantity(flowLph, 'emitterFlow')}`,
  sprays: ({ count, quantity }: Format, pieces: number, flowLph: number) =>
    `${count(pieces, SPRAYS)} of ${quantity(flowLph, 'emitterFlow')}`,
  solid: ({ quantity }: Format, lengthM: number) => `${quantity(lengthM, 'length')} of solid line`,
  tees: ({ count }: Format, pieces: number) => count(pieces, TEES),
  endCaps: ({ count }: Format, pieces: number) => count(pieces, END_CAPS),
  fittings: 'Fittings are counted as lines are usually laid. Measure the solid line to a new valve yourself.',
};

export const whatIfsWords = area('whatIfs', whatIfs);
