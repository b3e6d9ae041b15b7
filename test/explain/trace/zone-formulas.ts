/** A zone's and the garden's steps worked again from their inputs alone. */
import { type Formula, type Formulas, type LabelId, type StepInputs, total } from './step-inputs.ts';

const sum: Formula = (given) => total(given.numbers());

const wanted: Formula = (given) => {
  if (given.variant !== 'area-weighted') return Math.max(0, ...given.numbers());
  const litres = given.by('litres-of-a-minute', 'name');
  const asked = given.by('planting', 'name');
  const weighted = [...litres].map(([planting, share]) => (asked.get(planting) ?? Number.NaN) * share);
  return litres.size === 0 ? 0 : total(weighted) / total(litres.values());
};

function rounded(given: StepInputs): { readonly minutes: number; readonly cycles: number } {
  const step = given.num('timer-step');
  // A run that is a whole number of steps but for rounding takes no step more.
  const steps = Math.ceil(given.num('minutes-needed') / step - 1e-9);
  if (steps <= 0) return { minutes: 0, cycles: 0 };
  const longest = given.numOr('longest-cycle', Number.POSITIVE_INFINITY);
  const cycles = Math.max(1, Math.ceil(steps / Math.max(1, Math.floor(longest / step + 1e-9))));
  return { minutes: cycles * Math.ceil(steps / cycles) * step, cycles };
}

const perDay: Formula = (given) => {
  const origin = given.code('origin');
  if (origin === 'computed') return rounded(given).minutes;
  if (origin === 'closed') return 0;
  return given.num('minutes-given') / given.num('week-watering-days');
};

const cycles: Formula = (given) => {
  if (given.has('timer-step')) return rounded(given).cycles;
  const run = given.num('minutes-per-day');
  return run === 0 ? 0 : Math.max(1, Math.ceil(run / given.numOr('longest-cycle', Number.POSITIVE_INFINITY)));
};

const closing: Formula = (given) =>
  given.num('rain-litres') +
  given.num('litres') -
  given.num('used-litres') -
  given.num('drained-litres') -
  given.num('lost-litres') -
  given.num('storage-litres');

const WORST_FIRST = ['dry', 'short', 'over', 'met'];

const state: Formula = (given) => {
  const states = given.step.inputs.filter(({ label }) => label.id === 'planting').map(({ value }) => String(value));
  if (states.length === 0) return 'off';
  if (given.code('origin') === 'closed') return 'closed';
  return WORST_FIRST.find((candidate) => states.includes(candidate)) ?? '?';
};

const over =
  (above: LabelId, below: LabelId): Formula =>
  (given) =>
    given.num(below) === 0 ? 0 : given.num(above) / given.num(below);

export const ZONE_FORMULAS: Formulas = {
  'zone-minutes': wanted,
  'minutes-per-day': perDay,
  cycles,
  minutes: (given) => given.num('minutes-per-day') * given.num('week-watering-days'),
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
  'rain-credit': over('rain-stayed-litres', 'ground-of-all'),
  'rain-credit-litres': (given) => given.num('rain-stayed-litres') / given.num('efficiency'),
  'rain-credit-minutes': over('rain-credit-litres', 'flow-of-all'),
  'cumulative-rain': sum,
  'cumulative-irrigation': sum,
  'cumulative-demand': sum,
  'cumulative-from-soil': (given) => Math.max(0, -given.num('cumulative-storage')),
  'cumulative-unmet': (given) => Math.max(0, given.num('cumulative-demand') - given.num('cumulative-used')),
  state,
};

/** The garden's own are its sums. */
export const GARDEN_FORMULAS: Formulas = { ...ZONE_FORMULAS, minutes: sum, 'rain-credit-litres': sum };
