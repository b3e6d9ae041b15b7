/** A planting's demand, rain and soil worked again from the inputs of its steps alone. */
import { type Formula, type Formulas, type StepInputs, total } from './step-inputs.ts';

/** FAO-56 eq. 66 with its Example 28: the day of planting is day 1. */
function kcOn(given: StepInputs, day: number): number {
  const initial = given.num('Initial stage');
  const development = initial + given.num('Development');
  const mid = development + given.num('Mid-season');
  const late = mid + given.num('Late season');
  const along = (from: number, to: number, low: number, high: number) =>
    low + ((day - from) / (to - from)) * (high - low);
  if (day < 1 || day > late) return 0;
  if (day <= initial) return given.num('Kc ini');
  if (day <= development) return along(initial, development, given.num('Kc ini'), given.num('Kc mid'));
  return day <= mid ? given.num('Kc mid') : along(mid, late, given.num('Kc mid'), given.num('Kc end'));
}

/** Stages of 365 days last through a leap year where growth starts anew every year. */
function lasting(given: StepInputs, day: number): number {
  const all = total(['Initial stage', 'Development', 'Mid-season', 'Late season'].map((stage) => given.num(stage)));
  return given.step.says.includes('every year') && all >= 365 ? Math.min(day, all) : day;
}

const crop: Formula = (given) => {
  const count = given.num('Days in the ground');
  const first = given.num('Day of growth, first day of the week in the ground');
  const anew = given.numOr('Days until growth starts anew', count);
  const dayOn = (offset: number) => (offset < anew ? lasting(given, first + offset) : offset - anew + 1);
  return total(Array.from({ length: count }, (_, offset) => kcOn(given, dayOn(offset)))) / count;
};

const establishing: Formula = (given) => {
  const all = given.num('Days in the ground');
  const some = given.num('Establishing days');
  return (some * given.num('Establishing factor') + (all - some)) / all;
};

const demand: Formula = (given) => {
  if (given.has('Coefficient K')) return given.num('Coefficient K') * given.num('ETo of the days in the ground');
  const eto = given.ending(', ETo');
  return total([...given.ending(', K')].map(([day, k]) => k * (eto.get(day) ?? Number.NaN)));
};

/** Of the month's rain, by the method in the step's title; TR-21 in inches, as it was published. */
const rainShare: Formula = (given) => effectiveRain(given) / given.num('Rain of the month P');

function effectiveRain(given: StepInputs): number {
  const rain = given.num('Rain of the month P');
  const { title } = given.step;
  if (given.has('Share that counts')) return (rain * given.num('Share that counts')) / 100;
  if (title.includes('FAO')) return Math.max(0, rain > 75 ? 0.8 * rain - 25 : 0.6 * rain - 10);
  if (title.includes('SCS')) return rain > 250 ? 125 + 0.1 * rain : (rain * (125 - 0.2 * rain)) / 125;
  if (title.includes('balance')) return rain;
  const etc = given.num('Demand of the month ETc');
  const d = Math.min(7, Math.max(0.75, given.num('Usable storage D, the readily available water') / 25.4));
  const storage = 0.531747 + 0.295164 * d - 0.057697 * d ** 2 + 0.003804 * d ** 3;
  const inches = storage * (0.70917 * (rain / 25.4) ** 0.82416 - 0.11556) * 10 ** (0.02426 * (etc / 25.4));
  return Math.max(0, Math.min(25.4 * inches, rain, etc));
}

const soaked: Formula = (given) => {
  const normal = given.ending(', rain from the normals');
  const measured = given.ending(', measured rain');
  const credited = [...normal].map(([month, rain]) => rain * given.num(`Share of ${month}’s rain`));
  const counted = [...measured].map(([day, rain]) => (rain < 0.2 * given.num(`${day}, ETo`) ? 0 : rain));
  const ofWeek = given.numOr('From the week’s measured total', 0);
  return total(credited) + (total(counted) + ofWeek) * (1 - given.numOr('Runoff', 0) / 100);
};

const readilyAvailable: Formula = (given) => {
  const [etc] = given.starting('ETc of ').values();
  const p = given.num('Allowed depletion p');
  const adjusted = etc === undefined ? p : Math.min(0.8, Math.max(0.1, p + 0.04 * (5 - etc)));
  return adjusted * given.num('Total available water TAW');
};

const depletionStart: Formula = (given) => {
  const [before] = given.starting('Depletion at the end of week ').values();
  return before ?? share(given, 'Start share of the allowed depletion');
};

function share(given: StepInputs, label: string): number {
  return given.num(label) * given.num('Allowed depletion p') * given.num('Total available water TAW');
}

export const DEMAND_FORMULAS: Formulas = {
  'landscape-coefficient': (given) => given.numbers().reduce((product, number) => product * number, 1),
  'crop-coefficient': crop,
  establishing,
  demand,
  'rain-share': rainShare,
  'effective-rain': soaked,
  'available-water': (given) =>
    given.num('Root depth Zr') * total(given.starting('Available water of the soil, ').values()),
  'readily-available-water': readilyAvailable,
  'depletion-start': depletionStart,
  'target-depletion': (given) => share(given, 'Target share of the allowed depletion'),
};
