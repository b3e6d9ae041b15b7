/** A planting's need, minutes, balance and state worked again from the inputs of its steps alone. */
import {
  type Drained,
  drainedFromParts,
  drainedFromPots,
  meanOfParts,
  potBalance,
  shortDaysOfParts,
  shortDaysOfPots,
  usedOfParts,
} from './ground-formulas.ts';
import { minutesAsked } from './minutes-asked-formula.ts';
import { type Formula, type Formulas, type LabelId, type StepInputs, total } from './step-inputs.ts';

/** Two ways to one depletion may differ by so much. */
const ROUNDING_MM = 1e-9;
const ROUNDING_MINUTES = 1e-9;

/** How dry it may be, by the day that allows least; Infinity where no day does. */
const allowed = (given: StepInputs): number =>
  given.has('readily-available-then')
    ? given.num('readily-available-then') - given.numOr('demand-between', 0) - given.numOr('rooted-between', 0)
    : Number.POSITIVE_INFINITY;

/** A pot ends the day with what it used less rain after its last run. */
const goal: Formula = (given) => {
  const room = given.has('establishing-until') ? 0 : Math.min(given.num('target'), allowed(given));
  return Math.max(given.variant === 'pot' ? given.num('after-last-run') : 0, room);
};

const need: Formula = (given) => {
  if (given.code('due') === 'no' || given.numOr('watering-days-in-ground', 1) === 0) return 0;
  if (given.code('resting') === 'yes') return 0;
  const share = given.variant.startsWith('part-') ? given.num('wetted-share') : 1;
  if (given.variant.endsWith('filled')) return share * total(given.by('day-depletion-start', 'day').values());
  const rooted = given.by('day-rooted', 'day');
  let depletion = only(given, 'day-depletion-start');
  for (const [day, change] of given.by('day-change', 'day')) {
    depletion = Math.max(0, depletion) + (rooted.get(day) ?? 0) + change;
  }
  return share * Math.max(0, depletion - given.num('goal'));
};

const only = (given: StepInputs, id: LabelId): number => {
  const [value = Number.NaN] = given.by(id, 'day').values();
  return value;
};

/** Left alone through the days of which changes are given. */
const leftAlone = (given: StepInputs): number => {
  const rooted = given.by('day-rooted', 'day');
  return [...given.by('day-change', 'day')].reduce(
    (depletion, [day, change]) => Math.max(0, depletion + change) + (rooted.get(Number(day) + 1) ?? 0),
    only(given, 'day-depletion-start'),
  );
};

const isDue = (given: StepInputs): boolean => leftAlone(given) > Math.max(0, allowed(given)) + ROUNDING_MM;

const refillDue: Formula = (given) => {
  if (given.variant === 'still') {
    const [wetted] = given.by('part-depletion', 'part').values();
    return (wetted ?? given.num('depletion-start')) > 0.1 * given.num('filling') ? 'yes' : 'no';
  }
  if (given.variant === 'expected') {
    const [due] = given.days('days-due');
    return given.by('day-depletion-start', 'day').has(due) && only(given, 'day-depletion-start') > 0 ? 'yes' : 'no';
  }
  return isDue(given) ? 'yes' : 'no';
};

/** The day after those of which changes are given. */
const refillExpected: Formula = (given) => {
  const [first] = given.by('day-depletion-start', 'day').keys();
  return isDue(given) ? [Number(first) + given.by('day-change', 'day').size] : 'none';
};

const refilled: Formula = (given) => {
  const watered = only(given, 'day-depletion-start') - only(given, 'day-irrigation');
  return Math.min(watered, only(given, 'day-depletion-end')) <= 0.1 * given.num('filling') ? 'yes' : 'no';
};

/** As many of the watering days, spread evenly and ending on the last. */
function spread(days: readonly number[], count: number): readonly number[] {
  return Array.from(
    { length: count },
    (_, place) => days[Math.ceil(((place + 1) * days.length) / count) - 1] as number,
  );
}

const namedDays: Formula = (given) => {
  const watering = given.days('days-watering');
  const openable = given.has('days-asking') ? given.days('days-asking') : watering;
  const among = (named: readonly number[]) => {
    const open = named.filter((day) => openable.includes(day));
    return open.length === 0 ? 'none' : open;
  };
  switch (given.variant) {
    case 'hand-set':
      return given.num('hand-set-days') === 0
        ? 'none'
        : spread(watering, Math.min(given.num('hand-set-days'), watering.length));
    case 'fewest': {
      const ran = given.num('zone-minutes');
      const enough = [...given.by('minutes-on-days', 'openDays')].find(
        ([, needed]) => needed <= ran + ROUNDING_MINUTES,
      );
      return among(spread(watering, enough === undefined ? watering.length : Number(enough[0])));
    }
    case 'filling':
      return among(fillingDays(given));
    default:
      return given.code('due') === 'no' || given.numOr('minutes-asked', 0) === 0 ? 'none' : '?';
  }
};

function fillingDays(given: StepInputs): readonly number[] {
  const watering = given.days('days-watering');
  const rates = given.by('day-net-rate', 'day');
  const rooted = given.by('day-rooted', 'day');
  const minutes = given.by('day-minutes', 'day');
  const open: number[] = [];
  let missing = only(given, 'day-depletion-start');
  for (const [day, change] of given.by('day-change', 'day')) {
    const rate = rates.get(day);
    if (rate !== undefined) {
      open.push(Number(day));
      missing -= ((minutes.get(day) ?? Number.NaN) * rate) / 60;
      if (missing <= ROUNDING_MM) return open;
    }
    missing = Math.max(0, missing) + change + (rooted.get(Number(day) + 1) ?? 0);
  }
  return watering;
}

const openDays: Formula = (given) => {
  const running = given.days('days-running');
  return given.days('days-open').filter((day) => running.includes(day)).length;
};

const depthAt =
  (rates: 'application-rate' | 'net-rate'): Formula =>
  (given) => {
    const minutes = given.by('minutes-watered', 'line');
    return total([...given.by(rates, 'line')].map(([line, rate]) => (rate * (minutes.get(line) ?? 0)) / 60));
  };

/** Length in m, inside diameter in mm, flow in L/min: Hazen-Williams in m and m3/s; a metre of water is 9.80665 kPa. */
const lineFeed: Formula = (given) => {
  const q = given.num('flow-through') / 60_000;
  const of = (id: LabelId) => given.by(id, 'line');
  const frictions = [...of('solid-length')].map(([line, length]) => {
    const [d = Number.NaN, c = Number.NaN] = [of('solid-bore').get(line), of('smoothness').get(line)];
    const kpa = (9.80665 * 10.67 * length * (q / c) ** 1.852) / (d / 1000) ** 4.87;
    return Math.abs(kpa - (of('friction-loss').get(line) ?? Number.NaN)) <= 1e-9 * (1 + kpa) ? kpa : Number.NaN;
  });
  return Math.max(0, given.num('source-pressure') - total(of('climb-loss').values()) - total(frictions));
};

const lineFlow: Formula = (given) => {
  if (given.variant === 'none') return 0;
  const each = given.variant === 'at-pressure' ? 'mean-emitter-flow' : 'emitter-flow';
  return (given.num('emitters') * given.num(each)) / 60;
};

const shortDays: Formula = (given) => {
  if (given.variant.startsWith('part-')) return shortDaysOfParts(given);
  if (given.variant.startsWith('pot-')) return shortDaysOfPots(given);
  const raw = given.by('day-readily-available', 'day');
  const came = (day: unknown) =>
    total((['day-rain-soaked', 'day-irrigation'] as const).map((id) => given.by(id, 'day').get(day) ?? Number.NaN));
  return [...given.by('day-depletion-start', 'day')].filter(
    ([day, depletion]) => depletion - came(day) > (raw.get(day) ?? Number.NaN) + ROUNDING_MM,
  ).length;
};

const used: Formula = (given) => {
  if (given.variant === 'pot') return total(given.by('day-used', 'day').values());
  if (given.variant === 'part') return usedOfParts(given);
  const demand = given.by('day-demand', 'day');
  const there = given.by('day-water-there', 'day');
  const keptBack = [...given.by('day-stress', 'day')].map(([day, ks]) => {
    const etc = demand.get(day) ?? Number.NaN;
    return etc - Math.min(ks * etc, there.get(day) ?? Number.POSITIVE_INFINITY);
  });
  return given.num('demand') - total(keptBack);
};

function drained(given: StepInputs): Drained {
  if (given.variant === 'pot') return drainedFromPots(given);
  if (given.variant === 'part') return drainedFromParts(given);
  const on = (id: 'day-irrigation' | 'day-rain-soaked' | 'day-used', day: unknown) =>
    given.by(id, 'day').get(day) ?? Number.NaN;
  const days = [...given.by('day-depletion-start', 'day')].map(([day, depletion]) => {
    const irrigation = on('day-irrigation', day);
    const brought = on('day-rain-soaked', day) + irrigation;
    const excess = Math.max(0, brought - on('day-used', day) - depletion);
    const ofRain = Math.min(on('day-rain-soaked', day), excess);
    return { irrigation: excess - ofRain, rain: ofRain };
  });
  return { rain: total(days.map(({ rain }) => rain)), irrigation: total(days.map(({ irrigation }) => irrigation)) };
}

/** The first number less all others. */
const difference: Formula = (given) => {
  const [first = Number.NaN, ...others] = given.numbers();
  return first - total(others);
};

/** FAO-56 eq. 85 and 88: the day's use comes off before what is above field capacity drains. */
const dayBalance: Formula = (given) => {
  if (given.variant === 'part') return meanOfParts(given);
  if (given.variant === 'pot') return potBalance(given);
  const brought = only(given, 'day-rain-soaked') + only(given, 'day-irrigation');
  return Math.max(0, only(given, 'day-depletion-start') + only(given, 'day-used') - brought);
};

const missed: Formula = (given) => {
  const before = only(given, 'day-depletion-start') + only(given, 'day-change');
  const left = Math.max(0, before - only(given, 'day-irrigation') - given.num('goal'));
  return given.variant === 'part' ? given.num('wetted-share') * left : left;
};

const state: Formula = (given) => {
  if (given.numOr('ground-days', 1) === 0) return 'off';
  const wasted = Math.min(given.num('irrigation-drained') - given.numOr('leaching-depth', 0), given.num('unasked'));
  const over = wasted > given.num('rounding-excess') + 0.05 ? 'over' : 'met';
  if (given.code('resting') === 'yes') return over;
  const end =
    given.variant === 'part' ? Math.min(...given.by('day-part-end', 'part').values()) : given.num('depletion-end');
  if (end > given.num('day-readily-available') + 0.05) return 'dry';
  if (given.num('unmet-demand') > 0.05 || given.code('still-due') === 'yes') return 'short';
  const missable = Math.max(0.1 * given.numOr('need', 0), given.numOr('rounding-lack', 0));
  if (given.numOr('missed', 0) > missable + 0.05) return 'short';
  return over;
};

const volume: Formula = (given) => {
  const [depth = Number.NaN, area = Number.NaN, ...more] = given.numbers();
  return more.length === 0 ? depth * area : Number.NaN;
};

export const WATERING_FORMULAS: Formulas = {
  goal,
  need,
  'refill-expected': refillExpected,
  'refill-due': refillDue,
  refilled,
  'line-feed': lineFeed,
  'line-flow': lineFlow,
  'application-rate': (given) => (60 * given.num('line-flow')) / given.num('ground'),
  'net-rate': (given) => given.num('application-rate') * given.num('efficiency'),
  'minutes-asked': minutesAsked,
  'named-days': namedDays,
  'open-days': openDays,
  'minutes-open': (given) => total(given.numbers()),
  'irrigation-gross': depthAt('application-rate'),
  'irrigation-net': depthAt('net-rate'),
  'need-met': (given) => given.num('irrigation-net') / given.num('need'),
  'short-days': shortDays,
  used,
  'day-balance': dayBalance,
  leached: (given) => given.num('leaching-fraction') * given.num('irrigation-net'),
  'irrigation-drained': (given) => drained(given).irrigation + given.numOr('leaching-depth', 0),
  'rain-drained': (given) => drained(given).rain,
  'depletion-end': (given) =>
    given.num('depletion-start') +
    given.numOr('rooted', 0) +
    given.num('used') -
    given.num('effective-rain') -
    given.num('irrigation-net') +
    given.num('rain-drained') +
    given.num('irrigation-drained'),
  'rain-stayed': difference,
  'irrigation-stayed': difference,
  lost: (given) =>
    given.num('rain') - given.num('effective-rain') + given.num('irrigation-gross') - given.num('irrigation-net'),
  'storage-change': (given) => given.num('depletion-start') + given.numOr('rooted', 0) - given.num('depletion-end'),
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
  missed,
  state,
};
