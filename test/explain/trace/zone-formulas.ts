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

const MINUTES_OF_DAY = 1440;

interface Run {
  readonly minutes: number;
  readonly cycles: number;
}

/** Every number of cycles and of steps that the timer can do, by how far it is off; `least`: only those that are not less, if any. */
function roundedRun(given: StepInputs, wanted: number, isAtLeast: boolean): Run {
  const step = given.num('timer-step');
  if (isAtLeast ? wanted === 0 : wanted < step / 2 - 1e-9) return { minutes: 0, cycles: 0 };
  const longest = given.numOr('longest-cycle', Number.POSITIVE_INFINITY);
  const runsADay = given.numOr('runs-a-day', 1);
  const runs = Array.from({ length: Math.floor(given.num('starts-a-day') / runsADay) }, (_, place): Run => {
    const cycles = (place + 1) * runsADay;
    const most = Math.min(Math.floor(longest / step + 1e-9), Math.floor(MINUTES_OF_DAY / (cycles * step) + 1e-9));
    const exact = wanted / (cycles * step);
    const steps = isAtLeast ? Math.ceil(exact - 1e-9) : Math.floor(exact + 0.5 + 1e-9);
    return { cycles, minutes: cycles * Math.max(1, Math.min(steps, Math.max(1, most))) * step };
  });
  const enough = runs.filter(({ minutes }) => minutes >= wanted - 1e-9);
  const off = ({ minutes }: Run) => Math.abs(minutes - wanted);
  const candidates = isAtLeast && enough.length > 0 ? enough : runs;
  const aim = isAtLeast && enough.length === 0 ? ({ minutes }: Run) => -minutes : off;
  return candidates.reduce((best, run) => (aim(run) < aim(best) - 1e-9 ? run : best));
}

/** Rounded to the nearest, or up where with that somebody would not last to its next watering. */
function decided(given: StepInputs): number {
  const wanted = given.num('minutes-needed');
  const { minutes } = roundedRun(given, wanted, false);
  const rates = given.by('net-rate-of', 'name');
  const lasting = given.by('lasts-from', 'name');
  const isPassing = [...given.by('depletion-of', 'name')].some(
    ([name, depletion]) =>
      depletion - (minutes * (rates.get(name) ?? Number.NaN)) / 60 >
      (lasting.get(name) ?? Number.POSITIVE_INFINITY) + 1e-9,
  );
  return isPassing ? roundedRun(given, wanted, true).minutes : minutes;
}

const perDay: Formula = (given) => {
  if (given.has('minutes-needed')) return decided(given);
  if (given.code('origin') === 'closed') return 0;
  if (given.variant === 'run-by-day') return Math.max(0, ...given.by('day-minutes', 'day').values());
  return given.num('minutes-given') / given.num('week-watering-days');
};

const cut: Formula = (given) => {
  const step = given.num('timer-step');
  return Math.floor((given.num('minutes-per-day') * (1 - given.num('cut-share'))) / step + 1e-9) * step;
};

/** The fewest of the days, spread evenly and ending on the last, of which no two lie further apart than a filling lasts. */
const daysAWeek: Formula = (given) => {
  const lasts = Math.max(1, Math.floor(one(given, 'water-at-hand') / one(given, 'daily-use') + 1e-9));
  const allowed =
    given.has('allowed-days') && given.code('allowed-days') === undefined ? given.days('allowed-days') : [];
  const counts = allowed.map((_, index) => index + 1);
  const fits = counts.find((count) => {
    const days = counts
      .slice(0, count)
      .map((at) => allowed[Math.ceil((at * allowed.length) / count) - 1] ?? Number.NaN);
    return days.every((day, at) => (days[at + 1] ?? (days[0] ?? Number.NaN) + 7) - day <= lasts);
  });
  return fits ?? allowed.length;
};

const one = (given: StepInputs, id: LabelId): number => {
  const [value = Number.NaN] = given.by(id, 'name').values();
  return value;
};

const cycles: Formula = (given) => {
  const run = given.num('minutes-per-day');
  if (given.has('timer-step')) return roundedRun(given, run, false).cycles;
  if (run === 0) return 0;
  const runsADay = given.numOr('runs-a-day', 1);
  const fewest = Math.ceil(run / runsADay / given.numOr('longest-cycle', Number.POSITIVE_INFINITY) - 1e-9);
  return runsADay * Math.min(Math.max(1, fewest), Math.floor(given.num('starts-a-day') / runsADay));
};

const weekMinutes: Formula = (given) =>
  given.variant === 'one-number' ? given.num('minutes-per-day') * given.num('run-days') : total(given.numbers());

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
  'days-a-week': daysAWeek,
  'runs-a-day': (given) =>
    Math.min(
      given.num('starts-a-day'),
      given.variant === 'ground' ? 2 : Number.POSITIVE_INFINITY,
      Math.ceil(one(given, 'runs-use') / one(given, 'runs-readily-available') - 1e-9),
    ),
  'zone-minutes': wanted,
  'minutes-per-day': perDay,
  'minutes-cut': cut,
  cycles,
  minutes: weekMinutes,
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
