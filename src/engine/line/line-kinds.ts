/** The kinds of line that can be laid, one row a kind. Whoever must answer for each has a `Record<LineKind, ...>` of its own. */
import type { WateringMethod } from '../application/efficiencies.data.ts';

export interface LineKindFacts {
  /** Where its emitters sit: built into the tube, round each plant, spread over the planting; `none`: it carries water only. */
  readonly emitters: 'built-in' | 'each-plant' | 'whole-planting' | 'none';
  /** The way of watering whose usual efficiency it has. */
  readonly method: WateringMethod;
}

export const LINE_KINDS = {
  dripline: { emitters: 'built-in', method: 'drip' },
  point: { emitters: 'each-plant', method: 'drip' },
  spray: { emitters: 'whole-planting', method: 'overspray' },
  solid: { emitters: 'none', method: 'drip' },
} as const satisfies Readonly<Record<string, LineKindFacts>>;

export type LineKind = keyof typeof LINE_KINDS;
