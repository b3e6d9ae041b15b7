import type { GardenLine, GardenPlanting } from '../garden.ts';
import type { Emitter } from './emitter.ts';
import type { Lateral } from './lateral.ts';
import { LINE_KINDS } from './line-kinds.ts';
import { NOMINAL_PRESSURE_KPA } from './usual-pressures.data.ts';

/** One of the equal runs in which a planting's line is laid: all that its hydraulics need but the pressure. */
export interface LineRun {
  readonly lateral: Omit<Lateral, 'inletPressureKpa'>;
  /** Equal runs, each fed for itself. */
  readonly runs: number;
  /** Tube of one run. */
  readonly lengthM: number;
  /**
   * `laid`: as the plan says. `estimated`: emitters that are set one by one have no spacing of their own; each is taken
   * to stand as far from the next as the square of its share of the ground is wide.
   */
  readonly spacing: 'laid' | 'estimated';
}

/** The planting's ground, of which the estimate is made. */
export type LineGround = Pick<GardenPlanting, 'areaM2' | 'plants'>;

/**
 * A planting's line as a lateral; undefined where it has no emitter. The tube from the source to the run, and whatever
 * else hangs on it, are left out: the pressure is that at the inlet of the run.
 */
export function lineRun(line: GardenLine, ground: LineGround): LineRun | undefined {
  if (!(line.emitters > 0)) return undefined;
  const { spacingM, lengthM, runs } = line;
  if (spacingM === undefined || lengthM === undefined || runs === undefined) return estimatedRun(line, ground);
  const outlets = Math.max(1, Math.round(line.emitters / runs));
  const runLengthM = lengthM / runs;
  // A loop's tube is what it is: half of what the spacings leave over lies at either end.
  const leadM = line.topology === 'loop' ? Math.max(0, (runLengthM - (outlets - 1) * spacingM) / 2) : spacingM;
  return {
    lateral: { ...tubeOf(line), outlets, spacingM, leadM, emittersPerOutlet: line.emitters / runs / outlets },
    runs,
    lengthM: runLengthM,
    spacing: 'laid',
  };
}

/** Emitters round one plant hang on the tube at one place. */
function estimatedRun(line: GardenLine, { areaM2, plants }: LineGround): LineRun {
  const byPlant =
    LINE_KINDS[line.kind].emitters === 'each-plant' && plants !== undefined && line.emitters % plants === 0;
  const outlets = byPlant ? plants : line.emitters;
  const spacingM = Math.sqrt(areaM2 / outlets);
  return {
    lateral: { ...tubeOf(line), outlets, spacingM, emittersPerOutlet: line.emitters / outlets },
    runs: 1,
    lengthM: (line.topology === 'loop' ? outlets + 1 : outlets) * spacingM,
    spacing: 'estimated',
  };
}

function tubeOf(line: GardenLine): Pick<Lateral, 'topology' | 'insideDiameterMm' | 'riseMPerM' | 'emitter'> {
  const { topology, insideDiameterMm, riseMPerM } = line;
  return { topology, insideDiameterMm, riseMPerM, emitter: emitterOf(line) };
}

/** Pressure, kPa, that even an emitter which is said to need none is taken to need. */
const SLIGHTEST_KPA = 1;

/** A plain emitter's flow is taken as that at the usual regulated pressure. */
export function emitterOf(line: GardenLine): Emitter {
  const { emitterFlowLph: nominalFlowLph, exponent } = line;
  return line.compensating
    ? {
        kind: 'compensating',
        nominalFlowLph,
        leastPressureKpa: Math.max(SLIGHTEST_KPA, line.leastPressureKpa),
      }
    : { kind: 'plain', nominalFlowLph, nominalPressureKpa: NOMINAL_PRESSURE_KPA, exponent };
}
