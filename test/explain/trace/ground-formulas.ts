/**
 * Mulch, pots, ground that is wetted in part, roots that grow, and rest, worked again from the inputs of their steps alone. Written from
 * FAO-56 (eq. 84 to 88, ch. 8 and 10, Table 25, Example 38), the handbook's table of wetted widths (NEH 623 ch. 7, from memory) and the rules
 * of two stores and of pots as the guide states them.
 */
import { type Formula, type Formulas, type LabelId, type StepInputs, total } from './step-inputs.ts';

const only = (given: StepInputs, id: LabelId): number => {
  const [value = Number.NaN, ...others] = given.by(id, 'day').values();
  return others.length === 0 ? value : Number.NaN;
};

/** Table 25, lesser ends, and its mean. */
const LESS_UNDER_PLASTIC = [0.05, 0.15, 0.25, 0.35, 0.1];

const underPlastic = (given: StepInputs): number => {
  const less = given.num('mulch-less');
  return 1 - (LESS_UNDER_PLASTIC.find((printed) => Math.abs(printed - less) < 1e-9) ?? Number.NaN);
};

/** Evaporation falls by 5 % for each tenth of the ground that is covered; it is a twentieth of Kc once leaves cover the ground. */
const mulchedKc: Formula = (given) => {
  const bare = given.num('kc-bare');
  switch (given.variant) {
    case 'organic-first':
      return bare * (1 - (5 * (given.num('mulch-cover') * 10)) / 100);
    case 'organic':
      return bare - bare * 0.05 * (given.num('mulch-cover') * 0.5);
    case 'plastic-first':
      return Math.min(bare, 0.1);
    default:
      return bare * underPlastic(given);
  }
};

const mulchFactor: Formula = (given) =>
  given.variant === 'plastic' ? underPlastic(given) : 1 - 0.05 * 0.5 * given.num('mulch-cover');

const rest: Formula = (given) => {
  const first = given.num('ground-first');
  const days = Array.from({ length: given.num('ground-days') }, (_, offset) => first + offset);
  return days.filter((day) => day >= given.num('rest-from') && day <= given.num('rest-to')).length;
};

const rainFactor: Formula = (given) =>
  given.variant === 'plastic'
    ? 0
    : (given.num('pots') * Math.PI * (given.num('opening') / 2) ** 2 * given.num('opening-rain')) / given.num('ground');

const rootDepth: Formula = (given) => {
  const [first, full] = [given.num('first-root-depth'), given.num('full-root-depth')];
  const grown = (given.num('growth-day-last') - given.num('stage-initial')) / given.num('stage-development');
  if (grown <= 0) return first;
  return grown >= 1 ? full : first + grown * (full - first);
};

const FOOT_M = 0.3048;
const GPH_LPH = 3.785411784;
const WIDTHS_FT: Readonly<Record<string, readonly [number, number]>> = {
  coarse: [1.5, 2.5],
  medium: [3, 4],
  fine: [3.5, 5],
};

const wettedWidth: Formula = (given) => {
  const feet = given.num('root-depth') / FOOT_M;
  const [at2, at5] = WIDTHS_FT[given.code('soil-group') ?? ''] ?? [Number.NaN, Number.NaN];
  const width = feet < 2.5 ? at2 * (feet / 2.5) ** 0.35 : at2 + ((at5 - at2) * (Math.min(5, feet) - 2.5)) / 2.5;
  return width * FOOT_M * (given.num('wetting-flow') / GPH_LPH) ** 0.33;
};

const wettedGround: Formula = (given) => {
  if (given.variant === 'all') return given.num('ground');
  const width = given.num('wetted-width');
  const circles = given.num('emitters') * Math.PI * (width / 2) ** 2;
  return given.variant === 'strip' ? Math.min(circles, given.num('line-length') * width) : circles;
};

const wettedShare: Formula = (given) => {
  if (given.variant === 'typed') return Number(given.step.result.value);
  const wet = total(given.by('wetted-ground', 'line').values());
  return Math.max(0.05, Math.min(1, Math.round((100 * wet) / given.num('ground')) / 100));
};

const askedRate: Formula = (given) =>
  (total(given.by('net-rate', 'line').values()) * (1 - given.numOr('leaching-fraction', 0))) /
  given.numOr('wetted-share', 1);

const ROUNDING_MM = 1e-9;

/** What a part that starts a day so dry has within easy reach on it, after what comes (FAO-56 Example 38). */
const withinReach = (depletion: number, raw: number, brought: number): number => Math.max(0, raw - depletion + brought);

const stress = (depletion: number, raw: number, taw: number): number =>
  depletion <= raw ? 1 : Math.max(0, (taw - depletion) / (taw - raw));

interface Part {
  /** Of all the ground. */
  readonly share: number;
  readonly depletion: number;
  readonly brought: number;
}

const partsOf = (given: StepInputs): { readonly wetted: Part; readonly dry: Part } => {
  const depletion = given.by('day-part-depletion', 'part');
  const rain = only(given, 'day-rain-soaked');
  const share = given.num('wetted-share');
  return {
    wetted: {
      share,
      depletion: depletion.get('wetted') ?? Number.NaN,
      brought: rain + only(given, 'day-irrigation'),
    },
    dry: { share: 1 - share, depletion: depletion.get('dry') ?? Number.NaN, brought: rain },
  };
};

/** mm over each part. */
function drawnOf(given: StepInputs): Readonly<Record<string, number>> {
  const { wetted, dry } = partsOf(given);
  const etc = only(given, 'day-demand');
  const raw = only(given, 'day-readily-available');
  const taw = given.num('available-water');
  const most = ({ depletion, brought }: Part) => taw - depletion + brought;
  if (given.variant === 'alone') {
    const wanted = (stress(wetted.depletion - wetted.brought, raw, taw) * etc) / wetted.share;
    return { wetted: Math.min(wanted, most(wetted)), dry: 0 };
  }
  const within = (part: Part) => withinReach(part.depletion, raw, part.brought);
  // First its own share, then the lack from the other.
  const own = (part: Part) => Math.min(etc, within(part));
  const lackFirst = etc - wetted.share * own(wetted) - dry.share * own(dry);
  const more = (part: Part, lack: number) => Math.min(Math.max(0, lack) / part.share, within(part) - own(part));
  const moreWetted = more(wetted, lackFirst);
  const lackSecond = lackFirst - wetted.share * moreWetted;
  const moreDry = more(dry, lackSecond);
  const lackThird = Math.max(0, lackSecond - dry.share * moreDry);
  const given3 = (part: Part, extra: number) =>
    Math.min(own(part) + extra + lackThird * stress(part.depletion - part.brought, raw, taw), most(part));
  return { wetted: given3(wetted, moreWetted), dry: given3(dry, moreDry) };
}

const partDay: Formula = (given) => {
  const { part } = given.step as { readonly part?: 'wetted' | 'dry' };
  if (part === undefined) return Number.NaN;
  const { depletion, brought } = partsOf(given)[part];
  const drawn = drawnOf(given)[part] ?? Number.NaN;
  const told = given.by('day-drawn', 'part').get(part) ?? Number.NaN;
  return Math.abs(drawn - told) <= 1e-9 * (1 + drawn) ? Math.max(0, depletion + drawn - brought) : Number.NaN;
};

interface PotDay {
  readonly end: number;
  readonly used: number;
  readonly rainDrained: number;
  readonly irrigationDrained: number;
}

/** Irrigation first (FAO-56 Example 38), then rain beside use (eq. 85 and 88); d Dr / dt = Ks ETc solved beyond RAW. */
function potDay(given: StepInputs, day: unknown): PotDay {
  const on = (id: LabelId) => given.by(id, 'day').get(day) ?? Number.NaN;
  const runs = on('day-runs');
  const [raw, taw] = [on('day-readily-available'), on('day-available')];
  const [rain, irrigation, etc] = [on('day-rain-soaked') / runs, on('day-irrigation') / runs, on('day-demand') / runs];
  let depletion = on('day-depletion-start');
  const sums = { used: 0, rainDrained: 0, irrigationDrained: 0 };
  for (let run = 0; run < runs; run++) {
    if (irrigation > depletion) sums.irrigationDrained += irrigation - depletion;
    const level = Math.max(0, depletion - irrigation) - rain;
    const from = Math.max(0, level);
    const easy = Math.min(etc, Math.max(0, raw - from));
    const hard = etc - easy;
    const used = hard > 0 ? easy + (taw - Math.max(from, raw)) * (1 - Math.exp(-hard / (taw - raw))) : easy;
    sums.used += used;
    depletion = level + used;
    if (depletion < 0) sums.rainDrained -= depletion;
    depletion = Math.max(0, depletion);
  }
  return { end: depletion, ...sums };
}

export const potBalance: Formula = (given) => {
  const [day] = given.by('day-demand', 'day').keys();
  const { end, used } = potDay(given, day);
  return Math.abs(used - only(given, 'day-used')) <= 1e-9 * (1 + used) ? end : Number.NaN;
};

export const meanOfParts: Formula = (given) => {
  const ends = given.by('day-part-end', 'part');
  const share = given.num('wetted-share');
  return share * (ends.get('wetted') ?? Number.NaN) + (1 - share) * (ends.get('dry') ?? Number.NaN);
};

export interface Drained {
  readonly rain: number;
  readonly irrigation: number;
}

export function drainedFromPots(given: StepInputs): Drained {
  const days = [...given.by('day-demand', 'day').keys()].map((day) => potDay(given, day));
  return {
    rain: total(days.map(({ rainDrained }) => rainDrained)),
    irrigation: total(days.map(({ irrigationDrained }) => irrigationDrained)),
  };
}

export function drainedFromParts(given: StepInputs): Drained {
  const share = given.num('wetted-share');
  const of = (id: LabelId, day: unknown, part: string) => given.byDayAndPart(id).get(`${day} ${part}`) ?? Number.NaN;
  const days = [...given.by('day-rain-soaked', 'day')].map(([day, rain]) => {
    const irrigation = given.by('day-irrigation', 'day').get(day) ?? Number.NaN;
    const excess = (part: string, brought: number) =>
      Math.max(0, brought - of('day-drawn', day, part) - of('day-part-depletion', day, part));
    const wetted = excess('wetted', rain + irrigation);
    const dry = excess('dry', rain);
    return {
      rain: share * Math.min(rain, wetted) + (1 - share) * dry,
      irrigation: share * Math.max(0, wetted - rain),
    };
  });
  return { rain: total(days.map(({ rain }) => rain)), irrigation: total(days.map(({ irrigation }) => irrigation)) };
}

export function usedOfParts(given: StepInputs): number {
  const share = given.num('wetted-share');
  return total(
    [...given.byDayAndPart('day-drawn')].map(([of, drawn]) => (of.endsWith('wetted') ? share : 1 - share) * drawn),
  );
}

/** Days on which no part that roots are in has water within easy reach. */
export function shortDaysOfParts(given: StepInputs): number {
  const parts = [...given.byDayAndPart('day-part-depletion')];
  const on = (id: LabelId, day: unknown) => given.by(id, 'day').get(day) ?? Number.NaN;
  const came = (of: string, day: unknown) =>
    on('day-rain-soaked', day) + (of.endsWith('wetted') ? on('day-irrigation', day) : 0);
  return [...given.by('day-readily-available', 'day')].filter(([day, raw]) =>
    parts
      .filter(([of]) => of.startsWith(`${day} `))
      .every(([of, depletion]) => depletion - came(of, day) > raw + ROUNDING_MM),
  ).length;
}

export function shortDaysOfPots(given: StepInputs): number {
  const demand = given.by('day-demand', 'day');
  return [...given.by('day-used', 'day')].filter(([day, used]) => used < (demand.get(day) ?? Number.NaN) - ROUNDING_MM)
    .length;
}

/** The dry part gives its share while it has any; the wetted part the rest. From the morning of the step on. */
const wettedDemand: Formula = (given) => {
  const { day: morning } = given.step as { readonly day?: number };
  const share = given.num('wetted-share');
  const rain = given.by('day-rain-soaked', 'day');
  const raw = given.by('day-readily-available', 'day');
  const rooted = given.by('day-rooted', 'day');
  let dry = only(given, 'day-part-depletion');
  const fromWetted = [...given.by('day-demand', 'day')].map(([day, etc]) => {
    dry += rooted.get(day) ?? 0;
    const came = rain.get(day) ?? Number.NaN;
    const within = raw.has(day) ? withinReach(dry, raw.get(day) ?? Number.NaN, came) : 0;
    const fromDry = Math.min(etc, within);
    dry = Math.max(0, dry + fromDry - came);
    return Number(day) >= Number(morning) ? (etc - (1 - share) * fromDry) / share : 0;
  });
  return total(fromWetted);
};

export const GROUND_FORMULAS: Formulas = {
  'mulch-factor': mulchFactor,
  'mulched-kc': mulchedKc,
  rest,
  'rain-factor': rainFactor,
  'rain-there': (given) => given.num('rain') * given.num('rain-factor'),
  'root-depth': rootDepth,
  soak: (given) => given.num('soak-depth') * given.num('ground'),
  'wetted-demand': wettedDemand,
  'wetted-width': wettedWidth,
  'wetted-ground': wettedGround,
  'wetted-share': wettedShare,
  'asked-rate': askedRate,
  'store-day': partDay,
};
