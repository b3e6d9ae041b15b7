/**
 * One run of a planting's line as reaches with outlets. Tubing with emitters built in is laid in equal runs; emitters set one by one follow each
 * other on one tube, as far apart as the ground of an outlet is wide. A ring has as much tube before its first emitter as behind its last.
 * Above 2,000 outlets neighbours are taken together.
 */
import type { GardenLine, GardenPlanting } from '../../src/engine/garden.ts';
import { deadEndFlow, type Law, type Reach } from './dead-end.ts';
import { frictionOf, KPA_PER_METRE } from './pipe.ts';
import { halfOfRing } from './ring.ts';

/** At which a plain emitter gives what is printed on it: 20 psi, the usual regulated pressure (common practice). */
const NOMINAL_KPA = 20 * 6.894757293168361;
/** A compensating emitter needs some pressure, whatever is said of it. */
const LEAST_KPA = 1;
const MOST_OUTLETS = 2000;

type Ground = Pick<GardenPlanting, 'areaM2' | 'plants'>;

/** How a line's emitters stand on its tube. */
interface Laying {
  readonly runs: number;
  readonly outlets: number;
  readonly spacingM: number;
  readonly leadM: number;
  readonly emittersAnOutlet: number;
}

/** Litres an hour of all runs of a line whose inlet has this pressure. */
export function lineFlowLph(line: GardenLine, ground: Ground, inletKpa: number): number {
  if (line.kind === 'solid' || !(line.emitters > 0 && line.emitterFlowLph > 0)) return 0;
  const laying = layingOf(line, ground);
  const reaches = reachesOf(line, grouped(laying));
  const isRing = line.topology === 'loop';
  const half = isRing ? halfOfRing(reaches) : reaches;
  const isFull = line.compensating && isFullAlong(half, inletKpa, leastOf(line));
  return isFull ? line.flowLph : laying.runs * (isRing ? 2 : 1) * deadEndFlow(half, inletKpa);
}

/** Whether every outlet has its least pressure while all give what is printed on them: then there is nothing to seek. */
function isFullAlong(reaches: readonly Reach[], inletKpa: number, leastKpa: number): boolean {
  let onLph = reaches.reduce((sum, { law }) => sum + law(leastKpa), 0);
  let kpa = inletKpa;
  return reaches.every(({ law, lossKpa, climbKpa }) => {
    kpa -= lossKpa(onLph) + climbKpa;
    onLph = Math.max(0, onLph - law(leastKpa));
    return kpa >= leastKpa;
  });
}

function layingOf(line: GardenLine, { areaM2, plants }: Ground): Laying {
  const { emitters, runs, spacingM, lengthM, topology } = line;
  if (runs === undefined || spacingM === undefined || lengthM === undefined) {
    const isRoundPlants = line.kind === 'point' && plants !== undefined && emitters % plants === 0;
    const outlets = isRoundPlants ? plants : emitters;
    const apartM = Math.sqrt(areaM2 / outlets);
    return { runs: 1, outlets, spacingM: apartM, leadM: apartM, emittersAnOutlet: emitters / outlets };
  }
  const outlets = Math.max(1, Math.round(emitters / runs));
  const leftM = lengthM / runs - (outlets - 1) * spacingM;
  const leadM = topology === 'loop' ? Math.max(0, leftM / 2) : spacingM;
  return { runs, outlets, spacingM, leadM, emittersAnOutlet: emitters / runs / outlets };
}

function grouped(laying: Laying): Laying {
  const outlets = Math.ceil(laying.outlets / Math.ceil(laying.outlets / MOST_OUTLETS));
  const together = laying.outlets / outlets;
  return {
    ...laying,
    outlets,
    spacingM: together * laying.spacingM,
    emittersAnOutlet: together * laying.emittersAnOutlet,
  };
}

function reachesOf(line: GardenLine, { outlets, spacingM, leadM, emittersAnOutlet }: Laying): readonly Reach[] {
  const law = lawOf(line, emittersAnOutlet);
  const reach = (lengthM: number): Reach => ({
    law,
    lossKpa: frictionOf({ lengthM, boreMm: line.insideDiameterMm }),
    climbKpa: line.riseMPerM * lengthM * KPA_PER_METRE,
  });
  const between = reach(spacingM);
  return [reach(leadM), ...Array.from({ length: outlets - 1 }, () => between)];
}

/**
 * q = k H^x (Keller and Karmeli 1975; NEH 623 ch. 7). One that compensates gives the same from its least pressure on, below it by the square
 * root.
 */
function lawOf(line: GardenLine, emitters: number): Law {
  const fullLph = emitters * line.emitterFlowLph;
  if (line.compensating) {
    const leastKpa = leastOf(line);
    return (kpa) => (kpa > 0 ? fullLph * Math.sqrt(Math.min(1, kpa / leastKpa)) : 0);
  }
  return (kpa) => (kpa > 0 ? fullLph * (kpa / NOMINAL_KPA) ** line.exponent : 0);
}

function leastOf({ leastPressureKpa }: GardenLine): number {
  return Math.max(LEAST_KPA, leastPressureKpa);
}
