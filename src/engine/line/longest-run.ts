import { requireNumber } from '../require-number.ts';
import { FLOW_VARIATION_LIMIT } from './flow-variation.ts';
import { type Lateral, type LateralProfile, lateral } from './lateral.ts';
import { type LineLimit, lineLimit } from './line-limit.ts';

export interface LongestRunInput extends Omit<Lateral, 'outlets'> {
  /** Most that plain emitters may differ, 0..1. Left out: 10 %. */
  readonly mostFlowVariation?: number | undefined;
  /** Least pressure anywhere on the line, kPa. Left out: what a compensating emitter needs; none for a plain one. */
  readonly leastPressureKpa?: number | undefined;
  /** No run of more outlets is looked for. Left out: 2,000. */
  readonly mostOutlets?: number | undefined;
}

export interface LongestRun {
  /** 0 where not even one outlet works. */
  readonly outlets: number;
  /** Of tube: to the last outlet; in a loop all the way round. 0 where there is no run. */
  readonly lengthM: number;
  /** What one outlet more would break; `nothing found` where the run of `mostOutlets` still works. */
  readonly limitedBy: LineLimit | 'nothing-found';
  /** Of the longest run; undefined where there is none. */
  readonly profile: LateralProfile | undefined;
}

type Limit = LongestRun['limitedBy'];

/**
 * The longest run of a lateral that keeps every emitter's pressure at or above the least, and plain emitters' flows
 * within their spread (10 %). No published table of lengths is used: each length is computed with `lateral`, the number
 * of outlets doubled until one fails and then halved in.
 *
 * On level ground and uphill a longer run is never better, and the result is the longest of all. Downhill, where
 * friction may make good what the fall gave, it is a run that works next to one that does not, though a still longer
 * one might work again.
 *
 * @throws RangeError as `lateral` does
 */
export function longestRun(input: LongestRunInput): LongestRun {
  const { mostFlowVariation = FLOW_VARIATION_LIMIT, mostOutlets = 2000, leastPressureKpa, ...line } = input;
  requireNumber('most outlets', mostOutlets, { atLeast: 1 });
  const ownLeastKpa = line.emitter.kind === 'compensating' ? line.emitter.leastPressureKpa : 0;
  const bounds = { leastPressureKpa: leastPressureKpa ?? ownLeastKpa, mostFlowVariation };
  let best: LateralProfile | undefined;
  let works = 0;
  let fails = Math.floor(mostOutlets) + 1;
  let limitedBy: Limit = 'nothing-found';
  let tried = 1;
  while (fails - works > 1) {
    const profile = lateral({ ...line, outlets: tried });
    const limit = lineLimit(profile, bounds);
    if (limit) {
      fails = tried;
      limitedBy = limit;
    } else {
      works = tried;
      best = profile;
    }
    tried = limitedBy === 'nothing-found' ? Math.min(2 * works, fails - 1) : Math.floor((works + fails) / 2);
  }
  return { outlets: works, lengthM: best?.lengthM ?? 0, limitedBy, profile: best };
}
