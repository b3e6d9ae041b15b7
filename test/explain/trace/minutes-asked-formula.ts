/** The minutes that a planting asks for on a morning, worked again from its step: one bound from each day, and the greatest of them. */
import { type StepInputs, total } from './step-inputs.ts';

export function minutesAsked(given: StepInputs): number | string {
  switch (given.variant) {
    case 'left-alone':
      return given.code('due') === 'no' ? 0 : Number.NaN;
    case 'filling':
      return fill(startOf(given), netRates(given));
    case 'alone':
      return fill(Math.max(0, lackingAlone(given)), netRates(given));
    case 'no-line':
      return netRates(given).length > 0 || given.has('goal') ? byBounds(given) : 'no-run-is-enough';
    case 'short':
      return byHalving(given);
    default:
      return byBounds(given);
  }
}

function fill(depletion: number, rates: readonly number[]): number {
  return depletion === 0 ? 0 : (60 * depletion) / total(rates);
}

const netRates = (given: StepInputs) => [...given.by('day-net-rate', 'day').values()].filter((rate) => rate > 0);

function startOf(given: StepInputs): number {
  const [start = Number.NaN] = given.by('day-depletion-start', 'day').values();
  return start;
}

/** What a pot lacks on a morning of its own: after the last run it is full. */
function lackingAlone(given: StepInputs): number {
  const [change = Number.NaN] = given.by('day-change', 'day').values();
  const [left = Number.NaN] = given.by('day-left', 'day').values();
  return startOf(given) + change - left;
}

/** The least minutes that end at the goal; a day of which RAW is told is short, and uses Ks ETc (FAO-56 eq. 84). */
function byHalving(given: StepInputs): number {
  let [tooFew, enough] = [0, 1e6];
  if (endWith(given, tooFew) <= given.num('goal')) return 0;
  for (let half = 0; half < 200; half++) {
    const minutes = (tooFew + enough) / 2;
    if (endWith(given, minutes) > given.num('goal')) tooFew = minutes;
    else enough = minutes;
  }
  return enough;
}

/** What is missing at the end of the last day; each begins no wetter than full. */
function endWith(given: StepInputs, minutes: number): number {
  const of = (id: 'day-net-rate' | 'day-rooted' | 'day-demand' | 'day-readily-available' | 'day-available') =>
    given.by(id, 'day');
  return [...given.by('day-change', 'day')].reduce((before, [day, change], at) => {
    const start = at === 0 ? before : Math.max(0, before) + (of('day-rooted').get(day) ?? 0);
    const watered = start - ((of('day-net-rate').get(day) ?? 0) * minutes) / 60;
    const raw = of('day-readily-available').get(day);
    if (raw === undefined) return watered + change;
    const etc = of('day-demand').get(day) ?? Number.NaN;
    const taw = of('day-available').get(day) ?? Number.NaN;
    const came = watered + change - etc;
    const ks = came > raw ? Math.max(0, taw - came) / (taw - raw) : 1;
    return came + Math.min(ks * etc, taw - came);
  }, startOf(given));
}

/** On day L the depletion is the greatest, over all days j up to L, of the sums from j on less what was brought since. */
function byBounds(given: StepInputs): number | string {
  const changes = [...given.by('day-change', 'day')];
  const rates = given.by('day-net-rate', 'day');
  const rooted = given.by('day-rooted', 'day');
  const left = given.by('day-left', 'day');
  const bounds = changes.map(([first], from) => {
    const rest = changes.slice(from);
    // On the morning itself roots have grown, and a pot has used what it has.
    const grown = rest.map(([day]) => (day === changes[0]?.[0] ? 0 : (rooted.get(day) ?? 0)));
    const change = total(rest.map(([, each]) => each)) + total(grown);
    const before = from === 0 ? startOf(given) : (left.get(Number(first) - 1) ?? 0);
    const lacking = before + change - given.num('goal');
    const gain = total(rest.map(([day]) => rates.get(day) ?? 0)) / 60;
    return { lacking, gain };
  });
  const [first] = bounds;
  if (first === undefined) return Number.NaN;
  if (first.gain === 0) return first.lacking > 0 ? 'no-run-is-enough' : 0;
  return Math.max(0, ...bounds.filter(({ gain }) => gain > 0).map(({ lacking, gain }) => lacking / gain));
}
