/** One line: its emitters counted, its flow added up. */
import { type DayNumber, dayNumber } from '../../engine/calendar.ts';
import type { GardenLine } from '../../engine/garden.ts';
import { LINE_KINDS } from '../../engine/line/line-kinds.ts';
import type { UnitSystem } from '../../engine/units.ts';
import { DEFAULTS } from '../defaults.ts';
import type { PlanLine } from '../schema/plan-schema.ts';
import { inSi } from './in-si.ts';
import { keptAtPlaces } from './kept.ts';

export interface LineContext {
  readonly units: UnitSystem;
  /** The planting's first day. */
  readonly firstDay: DayNumber;
  /** Where plants are counted. */
  readonly plants: number | undefined;
  readonly canopyDiameterM: number;
}

type EmittingLine = Exclude<PlanLine, { kind: 'solid' }>;
type Layout = Extract<PlanLine, { kind: 'dripline' }>['layout'];

/**
 * A length that holds the last emitter but for rounding holds it. As a share: what was converted from the other unit system is
 * rounded to four digits, length and spacing each.
 */
const SPACING_TOLERANCE = 1e-4;

export function lineOf(line: PlanLine, context: LineContext): GardenLine {
  const from = line.from === undefined ? context.firstDay : dayNumber(line.from);
  if (line.kind === 'solid') return { from, kind: 'solid', ...NO_EMITTERS, ...hydraulicsOf({}, context.units) };
  const emitterFlowLph = inSi(line.flow, 'emitterFlow', context.units);
  const emitting = emittersOf(line, context);
  return {
    from,
    kind: line.kind,
    ...emitting,
    emitterFlowLph,
    flowLph: emitting.emitters * emitterFlowLph,
    ...hydraulicsOf(line, context.units),
  };
}

/** In order of their days. The same list wherever the same lines lie under the same circumstances. */
export function linesOf(lines: readonly PlanLine[], context: LineContext): readonly GardenLine[] {
  return laidLines(lines, whatMatters(lines, context));
}

const laidLines = keptAtPlaces((lines: readonly PlanLine[], context: LineContext) =>
  lines.map((line) => lineOf(line, context)).sort((left, right) => left.from - right.from),
);

/** Stands in for what lines do not hang on. */
const NO_MATTER = 0;

function whatMatters(
  lines: readonly PlanLine[],
  { units, firstDay, plants, canopyDiameterM }: LineContext,
): LineContext {
  const isLoop = (line: PlanLine) => line.kind === 'dripline' && line.layout.kind === 'loops';
  const areLoops = lines.some(isLoop);
  return {
    units,
    firstDay: lines.some(({ from }) => from === undefined) ? firstDay : NO_MATTER,
    plants: areLoops || lines.some(({ kind }) => LINE_KINDS[kind].emitters === 'each-plant') ? plants : undefined,
    canopyDiameterM: areLoops ? canopyDiameterM : NO_MATTER,
  };
}

const NO_EMITTERS = { emitters: 0, emitterFlowLph: 0, flowLph: 0 };

type Emitting = Pick<GardenLine, 'emitters' | 'spacingM' | 'lengthM' | 'runs'>;

function emittersOf(line: EmittingLine, context: LineContext): Emitting {
  switch (line.kind) {
    case 'point':
      return { emitters: line.count * (context.plants ?? 1) };
    case 'spray':
      return { emitters: line.count };
    case 'dripline': {
      const { runs, runLengthM } = runsOf(line.layout, context);
      const spacingM = inSi(line.spacing, 'spacing', context.units);
      const perRun = Math.floor((runLengthM / spacingM) * (1 + SPACING_TOLERANCE));
      return { emitters: runs * perRun, spacingM, lengthM: runs * runLengthM, runs };
    }
  }
}

/** Equal runs of tubing: one, the rows, or the loops (each as long as its circle is round). */
function runsOf(layout: Layout, { units, plants, canopyDiameterM }: LineContext) {
  switch (layout.kind) {
    case 'length':
      return { runs: 1, runLengthM: inSi(layout.length, 'length', units) };
    case 'rows':
      return { runs: layout.rows, runLengthM: inSi(layout.length, 'length', units) };
    case 'loops': {
      const diameterM = inSi(layout.diameter, 'diameter', units) ?? canopyDiameterM;
      return { runs: layout.perPlant * (plants ?? 1), runLengthM: Math.PI * diameterM };
    }
  }
}

type Hydraulics = Omit<GardenLine, 'from' | 'kind' | 'flowLph' | 'emitterFlowLph' | keyof Emitting>;

function hydraulicsOf(
  line: Pick<EmittingLine, 'topology' | 'slopeSide' | 'risePercent' | 'insideDiameter' | 'emitter'>,
  units: UnitSystem,
): Hydraulics {
  const { emitter } = line;
  return {
    topology: line.topology ?? DEFAULTS.topology,
    slopeSide: line.slopeSide ?? DEFAULTS.slopeSide,
    riseMPerM: line.risePercent === undefined ? DEFAULTS.riseMPerM : line.risePercent / 100,
    insideDiameterMm: inSi(line.insideDiameter, 'bore', units) ?? DEFAULTS.insideDiameterMm,
    compensating: (emitter?.kind ?? DEFAULTS.emitter) === 'compensating',
    leastPressureKpa:
      emitter?.kind === 'compensating'
        ? inSi(emitter.leastPressure, 'pressure', units)
        : leastPressureKpa(emitter?.kind),
    exponent: emitter?.kind === 'plain' ? emitter.exponent : DEFAULTS.exponent,
  };
}

/** A plain emitter runs at any pressure. */
const leastPressureKpa = (kind: 'plain' | undefined): number => (kind === 'plain' ? 0 : DEFAULTS.leastPressureKpa);
