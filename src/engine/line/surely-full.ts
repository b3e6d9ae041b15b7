import { frictionLossKpa } from './friction.ts';
import type { Lateral } from './lateral.ts';
import { reachesOf } from './reaches.ts';

/**
 * Whether a compensating line surely gives every emitter its least pressure, told in one pass without solving it.
 *
 * No emitter gives more than its full flow, so friction is at most that of full flow everywhere. If the pressure holds
 * even so, every emitter does give its full flow. Of a ring half is looked at, with the larger half of the outlets; its
 * other half is alike. False says nothing: the line must be solved.
 */
export function surelyFull(line: Lateral): boolean {
  const { emitter, outlets, topology, inletPressureKpa, emittersPerOutlet = 1 } = line;
  if (emitter.kind !== 'compensating' || line.course === 'through') return false;
  const { frictions, climbs } = reachesOf(line);
  const fed = topology === 'loop' ? Math.ceil(outlets / 2) : outlets;
  let pressureKpa = inletPressureKpa;
  for (let outlet = 0; outlet < fed; outlet += 1) {
    const carriedLph = (fed - outlet) * emittersPerOutlet * emitter.nominalFlowLph;
    const frictionKpa = frictionLossKpa(frictions[outlet] as number, carriedLph);
    pressureKpa -= frictionKpa + (climbs[outlet] as number);
    if (!(pressureKpa >= emitter.leastPressureKpa)) return false;
  }
  return true;
}
