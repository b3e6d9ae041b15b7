/** A zone's and the garden's steps worked again from their inputs alone. */
import { type Formula, type Formulas, type StepInputs, total } from './step-inputs.ts';

const sum: Formula = (given) => total(given.numbers());

const wanted: Formula = (given) => {
  const minute = ', net water of a minute on each watering day';
  const litres = given.ending(minute);
  if (!given.step.formula.includes('Σ')) return Math.max(0, ...given.numbers());
  const weighted = [...litres].map(([planting, share]) => given.num(planting) * share);
  return litres.size === 0 ? 0 : total(weighted) / total(litres.values());
};

function rounded(given: StepInputs): { readonly minutes: number; readonly cycles: number } {
  const step = given.num('Timer step');
  // A run that is a whole number of steps but for rounding takes no step more.
  const steps = Math.ceil(given.num('Minutes a watering day wanted') / step - 1e-9);
  if (steps <= 0) return { minutes: 0, cycles: 0 };
  const longest = given.numOr('Longest cycle', Number.POSITIVE_INFINITY);
  const cycles = Math.max(1, Math.ceil(steps / Math.max(1, Math.floor(longest / step + 1e-9))));
  return { minutes: cycles * Math.ceil(steps / cycles) * step, cycles };
}

const perDay: Formula = (given) => {
  const origin = given.word('The minutes are');
  if (origin === 'calculated') return rounded(given).minutes;
  if (origin === 'closed for the week by hand') return 0;
  return given.num('Minutes of the week, as given') / given.num('Watering days of the week');
};

const cycles: Formula = (given) => {
  if (given.has('Timer step')) return rounded(given).cycles;
  const run = given.num('Minutes a watering day');
  return run === 0 ? 0 : Math.max(1, Math.ceil(run / given.numOr('Longest cycle', Number.POSITIVE_INFINITY)));
};

const closing: Formula = (given) =>
  given.num('Rain that fell') +
  given.num('Water applied') -
  given.num('Water used') -
  given.num('Drained below the roots') -
  given.num('Lost on the way') -
  given.num('Change of the water in the soil');

const WORST_FIRST = ['dry', 'short', 'over', 'met'];

const state: Formula = (given) => {
  const states = given.step.inputs.filter(({ label }) => label !== 'The minutes are').map(({ value }) => String(value));
  if (states.length === 0) return 'off';
  if (given.word('The minutes are') === 'closed for the week by hand') return 'closed';
  return WORST_FIRST.find((candidate) => states.includes(candidate)) ?? '?';
};

const over =
  (above: string, below: string): Formula =>
  (given) =>
    given.num(below) === 0 ? 0 : given.num(above) / given.num(below);

export const ZONE_FORMULAS: Formulas = {
  'zone-minutes': wanted,
  'minutes-per-day': perDay,
  cycles,
  minutes: (given) => given.num('Minutes a watering day') * given.num('Watering days of the week'),
  flow: sum,
  litres: sum,
  'rain-litres': sum,
  'demand-litres': sum,
  'used-litres': sum,
  'rain-stayed-litres': sum,
  'irrigation-stayed-litres': sum,
  'drained-litres': sum,
  'lost-litres': sum,
  'storage-litres': sum,
  'needed-litres': sum,
  closing,
  'rain-credit': over('Rain that stayed', 'Ground of the plantings in the ground'),
  'rain-credit-litres': (given) => (100 * given.num('Rain that stayed')) / given.num('Efficiency'),
  'rain-credit-minutes': over('Irrigation saved', 'Flow of all its lines'),
  'cumulative-rain': sum,
  'cumulative-irrigation': sum,
  'cumulative-demand': sum,
  'cumulative-from-soil': (given) => Math.max(0, -given.num('Change of the water in the soil since the season began')),
  'cumulative-unmet': (given) =>
    Math.max(0, given.num('Demand since the season began') - given.num('Water used since the season began')),
  state,
};

/** The garden's own are its sums. */
export const GARDEN_FORMULAS: Formulas = { ...ZONE_FORMULAS, minutes: sum, 'rain-credit-litres': sum };
