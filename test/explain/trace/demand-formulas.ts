/** A planting's demand, rain and soil worked again from the inputs of its steps alone. */
import { type Formula, type Formulas, type LabelId, type StepInputs, total } from './step-inputs.ts';

const STAGES = ['stage-initial', 'stage-development', 'stage-mid', 'stage-late'] as const;

/** FAO-56 eq. 66 with its Example 28: the day of planting is day 1. */
function kcOn(given: StepInputs, day: number): number {
  const initial = given.num('stage-initial');
  const development = initial + given.num('stage-development');
  const mid = development + given.num('stage-mid');
  const late = mid + given.num('stage-late');
  const along = (from: number, to: number, low: number, high: number) =>
    low + ((day - from) / (to - from)) * (high - low);
  if (day < 1 || day > late) return 0;
  if (day <= initial) return given.num('kc-initial');
  if (day <= development) return along(initial, development, given.num('kc-initial'), given.num('kc-mid'));
  return day <= mid ? given.num('kc-mid') : along(mid, late, given.num('kc-mid'), given.num('kc-end'));
}

/** Stages of 365 days last through a leap year where growth starts anew every year. */
function lasting(given: StepInputs, day: number): number {
  const all = total(STAGES.map((stage) => given.num(stage)));
  return given.variant === 'perennial' && all >= 365 ? Math.min(day, all) : day;
}

const crop: Formula = (given) => {
  const count = given.num('ground-days');
  const first = given.num('growth-day');
  const anew = given.numOr('growth-days-left', count);
  const dayOn = (offset: number) => (offset < anew ? lasting(given, first + offset) : offset - anew + 1);
  return total(Array.from({ length: count }, (_, offset) => kcOn(given, dayOn(offset)))) / count;
};

const establishing: Formula = (given) => {
  const all = given.num('ground-days');
  const some = given.num('establishing-days');
  return (some * given.num('establishing-factor') + (all - some)) / all;
};

const demand: Formula = (given) => {
  if (given.has('coefficient')) return given.num('coefficient') * given.num('eto');
  const eto = given.by('day-eto', 'day');
  return total([...given.by('day-coefficient', 'day')].map(([day, k]) => k * (eto.get(day) ?? Number.NaN)));
};

/** Of the month's rain, by the method; TR-21 in inches, as it was published. */
const rainShare: Formula = (given) => {
  if (given.variant !== 'balance') return effectiveRain(given) / given.num('month-rain');
  const rain = given.num('years-rain');
  return rain === 0 ? 0 : Math.min(1, Math.max(0, given.num('years-kept') / rain));
};

function effectiveRain(given: StepInputs): number {
  const rain = given.num('month-rain');
  switch (given.variant) {
    case 'fraction':
      return rain * given.num('counted-share');
    case 'fao':
      return Math.max(0, rain > 75 ? 0.8 * rain - 25 : 0.6 * rain - 10);
    case 'scs-simplified':
      return rain > 250 ? 125 + 0.1 * rain : (rain * (125 - 0.2 * rain)) / 125;
    default:
      return byTr21(given, rain);
  }
}

/** D: what is drawn between waterings, at most what is readily available. */
function usableStorage(given: StepInputs): number {
  const raw = given.num('mean-readily-available');
  return given.has('mean-demand')
    ? Math.min(raw, (given.num('mean-demand') * 7) / given.num('week-watering-days'))
    : raw;
}

function byTr21(given: StepInputs, rain: number): number {
  const etc = given.num('month-demand');
  const d = Math.min(7, Math.max(0.75, usableStorage(given) / 25.4));
  const storage = 0.531747 + 0.295164 * d - 0.057697 * d ** 2 + 0.003804 * d ** 3;
  const inches = storage * (0.70917 * (rain / 25.4) ** 0.82416 - 0.11556) * 10 ** (0.02426 * (etc / 25.4));
  return Math.max(0, Math.min(25.4 * inches, rain, etc));
}

const fromNormals = (given: StepInputs): number => {
  const shares = given.by('rain-share', 'month');
  return total([...given.by('normal-rain', 'month')].map(([month, rain]) => rain * (shares.get(month) ?? Number.NaN)));
};

const soaked: Formula = (given) => {
  const eto = given.by('day-eto', 'day');
  const measured = [...given.by('day-rain', 'day')].map(([day, rain]) =>
    rain < 0.2 * (eto.get(day) ?? Number.NaN) ? 0 : rain,
  );
  return (fromNormals(given) + total(measured) * (1 - given.numOr('runoff', 0))) * given.numOr('rain-factor', 1);
};

const readilyAvailable: Formula = (given) => {
  const p = given.num('allowed-depletion');
  const [etc = Number.NaN] = given.by('day-demand', 'day').values();
  const share = given.variant === 'adjusted' ? Math.min(0.8, Math.max(0.1, p + 0.04 * (5 - etc))) : p;
  return share * given.num('available-water');
};

function allowedShare(given: StepInputs, share: LabelId): number {
  return given.num(share) * given.num('allowed-depletion') * given.num('available-water');
}

export const DEMAND_FORMULAS: Formulas = {
  'landscape-coefficient': (given) => given.numbers().reduce((product, number) => product * number, 1),
  'crop-coefficient': crop,
  establishing,
  demand,
  'expected-demand': demand,
  'expected-rain': (given) =>
    (fromNormals(given) + total(given.by('day-rain-soaked', 'day').values())) * given.numOr('rain-factor', 1),
  'rain-share': rainShare,
  'effective-rain': soaked,
  'available-water': (given) =>
    given.variant === 'pot'
      ? (given.num('pot-mix') * given.num('mix-available')) / given.num('ground')
      : given.num('root-depth') * given.num('soil-available-water'),
  'readily-available-water': readilyAvailable,
  'depletion-start': (given) =>
    given.variant === 'first-day' ? allowedShare(given, 'start-share') : given.num('depletion-before'),
  'target-depletion': (given) => (given.variant === 'leaching' ? 0 : allowedShare(given, 'target-share')),
};
