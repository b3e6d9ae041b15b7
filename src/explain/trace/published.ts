import { ASSUMPTION } from '../../engine/plants/crop-stages.data.ts';
import type { TraceSource } from './trace-step.ts';

/** How the tables mark, at the end of a source, that its printed text was not at hand: `FAO-56 Table 11; row from memory`. */
const FROM_MEMORY = /[,;] (?:[^,;]* )?from memory$/;

/** A source as the tables of plants and crops state it. */
export function published(source: string): TraceSource {
  if (source === ASSUMPTION) return { id: 'choice' };
  const cite = source.replace(FROM_MEMORY, '');
  return cite === source ? source : { id: 'not-checked', cite };
}
