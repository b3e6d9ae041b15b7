import { elevationLossKpa } from './elevation.ts';
import { frictionCoefficient } from './friction.ts';
import { hazenWilliamsC } from './hazen-williams-c.ts';

/** The tube in front of each outlet, from the feed on; in a loop one more, from the last outlet on to the feed. */
export interface Reaches {
  /** Friction at 1 L/h, kPa. */
  readonly frictions: Float64Array;
  /** Pressure lost by climbing, kPa; negative where the reach falls. */
  readonly climbs: Float64Array;
}

export interface ReachesInput {
  readonly topology: 'dead-end' | 'loop';
  readonly outlets: number;
  readonly spacingM: number;
  readonly leadM?: number | undefined;
  readonly insideDiameterMm: number;
  readonly hazenWilliamsC?: number | undefined;
  readonly riseMPerM?: number | undefined;
  readonly course?: 'ring' | 'through' | undefined;
}

/** Friction and climb of every reach of a lateral; what each value means and its default stand at `Lateral`. */
export function reachesOf(line: ReachesInput): Reaches {
  const { topology, outlets, spacingM, leadM = spacingM, insideDiameterMm, riseMPerM = 0, course = 'ring' } = line;
  const smoothness = line.hazenWilliamsC ?? hazenWilliamsC(insideDiameterMm);
  const perMetre = frictionCoefficient({ insideDiameterMm, lengthM: 1, hazenWilliamsC: smoothness });
  const count = topology === 'loop' ? outlets + 1 : outlets;
  const isLead = (reach: number) => reach === 0 || reach === outlets;
  const lengths = Float64Array.from({ length: count }, (_, reach) => (isLead(reach) ? leadM : spacingM));
  const totalM = lengths.reduce((sum, length) => sum + length, 0);
  const returns = topology === 'loop' && course === 'ring';
  const heightAt = (alongM: number) => riseMPerM * (returns ? Math.min(alongM, totalM - alongM) : alongM);
  let alongM = 0;
  const climbs = lengths.map((length) => {
    const from = heightAt(alongM);
    alongM += length;
    return elevationLossKpa(heightAt(alongM) - from);
  });
  return { frictions: lengths.map((length) => perMetre * length), climbs };
}
