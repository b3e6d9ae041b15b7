/** A planting's need, minutes, balance and state worked again from the inputs of its steps alone. */
import { minutesAsked } from './minutes-asked-formula.ts';
import { type Formula, type Formulas, type StepInputs, total } from './step-inputs.ts';

/** Two ways to one depletion may differ by so much. */
const ROUNDING_MM = 1e-9;

const goal: Formula = (given) =>
  Math.max(
    0,
    Math.min(
      given.num('Depletion to come back to T') -
        (given.num('Demand of the days after') - given.num('Rain of the days after')),
      // None where no day comes after.
      ...given.starting('Greatest from which none of the days after').values(),
    ),
  );

const need: Formula = (given) => {
  if (given.word('Filled this week') === 'no' || given.word('Watering day in the ground') === 'none') return 0;
  let depletion = given.num('Depletion at the week’s start');
  for (const change of given.ending(', demand less rain').values()) depletion = Math.max(0, depletion + change);
  return Math.max(0, depletion - total(given.starting('Depletion to reach by the end of ').values()));
};

const refill: Formula = (given) => {
  const alone = total(given.ending(', if left alone').values());
  return alone > total(given.starting('Readily available water RAW, ').values()) + ROUNDING_MM ? 'yes' : 'no';
};

const openDays: Formula = (given) => {
  if (given.numOr('Minutes a watering day of the zone', 1) === 0 || given.word('Water asked for') !== undefined)
    return 0;
  const all = given.num('Watering days of the week');
  if (given.has('Of these in the ground')) return given.num('Of these in the ground');
  if (given.has('Open days set by hand')) return Math.min(all, given.num('Open days set by hand'));
  if (!given.has('Minutes a watering day of the zone')) return all;
  const enough = [...given.ending(': depletion reached')].find(
    ([open, reached]) => reached <= given.num(`${open}: depletion to reach`) + ROUNDING_MM,
  );
  return enough === undefined ? all : Number.parseInt(enough[0], 10);
};

const gross: Formula = (given) => {
  const open = given.starting('Open days');
  const rates = given.starting('Application rate');
  const depthOfMinute = total([...rates].map(([line, rate]) => rate * (open.get(line) ?? Number.NaN))) / 60;
  return given.num('Minutes a watering day of the zone') * depthOfMinute;
};

const shortDays: Formula = (given) => {
  const raw = given.ending(', RAW');
  return [...given.ending(', depletion Dr')].filter(
    ([day, depletion]) => depletion > (raw.get(day) ?? Number.NaN) + ROUNDING_MM,
  ).length;
};

const used: Formula = (given) => {
  const keptBack = [...given.ending(', Ks')].map(([day, ks]) => {
    const etc = given.num(`${day}, ETc`);
    return etc - Math.min(ks * etc, given.numOr(`${day}, water there`, Number.POSITIVE_INFINITY));
  });
  return given.num('Demand ETc') - total(keptBack);
};

function drained(given: StepInputs): { readonly rain: number; readonly irrigation: number } {
  const days = [...given.ending(', depletion at the start')].map(([day, depletion]) => {
    const irrigation = given.num(`${day}, irrigation`);
    const brought = given.num(`${day}, rain that soaks in`) + irrigation;
    const excess = Math.max(0, brought - given.num(`${day}, used`) - depletion);
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
  if (given.word('Days in the ground') === 'none') return 'off';
  const end = given.num('Depletion at the week’s end');
  if (end > total(given.starting('Readily available water RAW, ').values()) + 0.05) return 'dry';
  const aim = given.numOr('Depletion the week should end with', Number.POSITIVE_INFINITY);
  if (given.num('Demand less water used') > 0.05 || end > aim + 0.05) return 'short';
  const explained = given.num('What rounding to the timer’s step can bring too much');
  return given.num('Irrigation drained') > explained + 0.05 ? 'over' : 'met';
};

const volume: Formula = (given) => {
  const [depth = Number.NaN, area = Number.NaN, ...more] = given.numbers();
  return more.length === 0 ? depth * area : Number.NaN;
};

export const WATERING_FORMULAS: Formulas = {
  goal,
  need,
  'refill-due': refill,
  'line-flow': (given) =>
    given.word('Line') === 'none laid' ? 0 : (given.num('Emitters') * given.num('Flow of one emitter')) / 60,
  'application-rate': (given) =>
    (60 * total(given.starting('Flow of the line').values())) / given.num('Ground of the planting'),
  'net-rate': (given) => (total(given.starting('Application rate').values()) * given.num('Efficiency')) / 100,
  'minutes-asked': minutesAsked,
  'open-days': openDays,
  'minutes-open': (given) => given.num('Minutes a watering day of the zone') * given.num('Open days'),
  'irrigation-gross': gross,
  'irrigation-net': (given) => (given.num('Gross irrigation') * given.num('Efficiency')) / 100,
  'need-met': (given) => (100 * given.num('Net irrigation')) / given.num('Net need'),
  'short-days': shortDays,
  used,
  'irrigation-drained': (given) => drained(given).irrigation,
  'rain-drained': (given) => drained(given).rain,
  'depletion-end': (given) =>
    given.num('Depletion at the week’s start') +
    given.num('Water used') -
    given.num('Effective rain') -
    given.num('Net irrigation') +
    given.num('Rain drained') +
    given.num('Irrigation drained'),
  'rain-stayed': difference,
  'irrigation-stayed': difference,
  lost: (given) =>
    given.num('Rain') - given.num('Effective rain') + given.num('Gross irrigation') - given.num('Net irrigation'),
  'storage-change': difference,
  closing: (given) =>
    given.num('Rain') +
    given.num('Gross irrigation') -
    given.num('Water used') -
    given.num('Rain drained') -
    given.num('Irrigation drained') -
    given.num('Lost') -
    given.num('Change of stored water'),
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
