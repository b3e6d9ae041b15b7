/** A planting's need, minutes, balance and state worked again from the inputs of its steps alone. */
import { minutesAsked } from './minutes-asked-formula.ts';
import { type Formula, type Formulas, type StepInputs, total } from './step-inputs.ts';

/** Two ways to one depletion may differ by so much. */
const ROUNDING_MM = 1e-9;

const goal: Formula = (given) =>
  Math.max(
    0,
    Math.min(
      given.num('target') - (given.num('demand-after') - given.num('rain-after')),
      // None where no day comes after.
      given.numOr('greatest-before', Number.POSITIVE_INFINITY),
    ),
  );

const need: Formula = (given) => {
  if (given.code('filled') === 'no' || given.numOr('watering-days-in-ground', 1) === 0) return 0;
  let depletion = given.num('depletion-start');
  for (const change of given.by('day-change', 'day').values()) depletion = Math.max(0, depletion + change);
  return Math.max(0, depletion - given.num('goal'));
};

const refill: Formula = (given) =>
  given.num('depletion-left-alone') > given.num('readily-available-then') + ROUNDING_MM ? 'yes' : 'no';

const openDays: Formula = (given) => {
  if (given.numOr('zone-minutes-per-day', 1) === 0) return 0;
  if (given.has('minutes-asked')) return given.code('minutes-asked') === undefined ? given.num('minutes-asked') : 0;
  const all = given.num('week-watering-days');
  if (given.has('of-these-in-ground')) return given.num('of-these-in-ground');
  if (given.has('hand-set-days')) return Math.min(all, given.num('hand-set-days'));
  if (!given.has('zone-minutes-per-day')) return all;
  const goals = given.by('depletion-to-reach', 'openDays');
  const enough = [...given.by('depletion-reached', 'openDays')].find(
    ([open, reached]) => reached <= (goals.get(open) ?? Number.NaN) + ROUNDING_MM,
  );
  return enough === undefined ? all : Number(enough[0]);
};

const gross: Formula = (given) => {
  const open = given.by('open-days', 'line');
  const rates = given.by('application-rate', 'line');
  const depthOfMinute = total([...rates].map(([line, rate]) => rate * (open.get(line) ?? Number.NaN))) / 60;
  return given.num('zone-minutes-per-day') * depthOfMinute;
};

const shortDays: Formula = (given) => {
  const raw = given.by('day-readily-available', 'day');
  return [...given.by('day-depletion', 'day')].filter(
    ([day, depletion]) => depletion > (raw.get(day) ?? Number.NaN) + ROUNDING_MM,
  ).length;
};

const used: Formula = (given) => {
  const demand = given.by('day-demand', 'day');
  const there = given.by('day-water-there', 'day');
  const keptBack = [...given.by('day-stress', 'day')].map(([day, ks]) => {
    const etc = demand.get(day) ?? Number.NaN;
    return etc - Math.min(ks * etc, there.get(day) ?? Number.POSITIVE_INFINITY);
  });
  return given.num('demand') - total(keptBack);
};

function drained(given: StepInputs): { readonly rain: number; readonly irrigation: number } {
  const on = (id: 'day-irrigation' | 'day-rain-soaked' | 'day-used', day: unknown) =>
    given.by(id, 'day').get(day) ?? Number.NaN;
  const days = [...given.by('day-depletion-start', 'day')].map(([day, depletion]) => {
    const irrigation = on('day-irrigation', day);
    const brought = on('day-rain-soaked', day) + irrigation;
    const excess = Math.max(0, brought - on('day-used', day) - depletion);
    return { irrigation: Math.min(irrigation, excess), rain: excess - Math.min(irrigation, excess) };
  });
  return { rain: total(days.map(({ rain }) => rain)), irrigation: total(days.map(({ irrigation }) => irrigation)) };
}

/** The first number less all others. */
const difference: Formula = (given) => {
  const [first = Number.NaN, ...others] = given.numbers();
  return first - total(others);
};

const state: Formula = (given) => {
  if (given.numOr('ground-days', 1) === 0) return 'off';
  const end = given.num('depletion-end');
  if (end > given.num('day-readily-available') + 0.05) return 'dry';
  const aim = given.numOr('end-goal', Number.POSITIVE_INFINITY);
  if (given.num('unmet-demand') > 0.05 || end > aim + 0.05) return 'short';
  return given.num('irrigation-drained') > given.num('rounding-excess') + 0.05 ? 'over' : 'met';
};

const volume: Formula = (given) => {
  const [depth = Number.NaN, area = Number.NaN, ...more] = given.numbers();
  return more.length === 0 ? depth * area : Number.NaN;
};

export const WATERING_FORMULAS: Formulas = {
  goal,
  need,
  'refill-due': refill,
  'line-flow': (given) => (given.variant === 'none' ? 0 : (given.num('emitters') * given.num('emitter-flow')) / 60),
  'application-rate': (given) => (60 * given.num('line-flow')) / given.num('ground'),
  'net-rate': (given) => given.num('application-rate') * given.num('efficiency'),
  'minutes-asked': minutesAsked,
  'open-days': openDays,
  'minutes-open': (given) => given.num('zone-minutes-per-day') * given.num('open-days'),
  'irrigation-gross': gross,
  'irrigation-net': (given) => given.num('irrigation-gross') * given.num('efficiency'),
  'need-met': (given) => given.num('irrigation-net') / given.num('need'),
  'short-days': shortDays,
  used,
  'irrigation-drained': (given) => drained(given).irrigation,
  'rain-drained': (given) => drained(given).rain,
  'depletion-end': (given) =>
    given.num('depletion-start') +
    given.num('used') -
    given.num('effective-rain') -
    given.num('irrigation-net') +
    given.num('rain-drained') +
    given.num('irrigation-drained'),
  'rain-stayed': difference,
  'irrigation-stayed': difference,
  lost: (given) =>
    given.num('rain') - given.num('effective-rain') + given.num('irrigation-gross') - given.num('irrigation-net'),
  'storage-change': difference,
  closing: (given) =>
    given.num('rain') +
    given.num('irrigation-gross') -
    given.num('used') -
    given.num('rain-drained') -
    given.num('irrigation-drained') -
    given.num('lost') -
    given.num('storage-change'),
  litres: volume,
  'needed-litres': volume,
  'demand-litres': volume,
  'used-litres': volume,
  'rain-stayed-litres': volume,
  'irrigation-stayed-litres': volume,
  'drained-irrigation-litres': volume,
  'unmet-litres': difference,
  state,
};
