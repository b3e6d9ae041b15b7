/** One line: its emitters counted, its flow added up. */
import { type DayNumber, dayNumber } from '../../engine/calendar.ts';
import type { EfficiencyBasis, GardenLine } from '../../engine/garden.ts';
import { LINE_KINDS } from '../../engine/line/line-kinds.ts';
import type { UnitSystem } from '../../engine/units.ts';
import { DEFAULTS } from '../defaults.ts';
import type { PlanLine } from '../schema/plan-schema.ts';
import { lineEfficiency } from './efficiency.ts';
import { inSi } from './in-si.ts';
import { firstDayOf, lineOrder } from './line-order.ts';
import { memoizeFew } from './memoize.ts';

export interface LineContext {
  readonly units: UnitSystem;
  /** The planting's first day. */
  readonly firstDay: DayNumber;
  /** Where plants are counted. */
  readonly plants: number | undefined;
  readonly canopyDiameterM: number;
  /** Of the zone, for all its lines; left out: each has its own or the usual. */
  readonly efficiency?: number | undefined;
  readonly efficiencyBasis?: EfficiencyBasis | undefined;
}

type EmittingLine = Exclude<PlanLine, { kind: 'solid' }>;
type Layout = Extract<PlanLine, { kind: 'dripline' }>['layout'];

/**
 * A length that holds the last emitter but for rounding holds it. As a share: what was converted from the other unit system is
 * rounded to four digits, length and spacing each.
 */
const SPACING_TOLERANCE = 1e-4;

export function lineOf(line: PlanLine, context: LineContext): GardenLine {
  const from = firstDayOf(line, context.firstDay);
  const days = { from, ...(line.to === undefined ? {} : { to: dayNumber(line.to) }) };
  if (line.kind === 'solid') return { ...days, kind: 'solid', ...NO_EMITTERS, ...solidTube(line, context.units) };
  const emitterFlowLph = inSi(line.flow, 'emitterFlow', context.units);
  const emitting = emittersOf(line, context);
  return {
    ...days,
    kind: line.kind,
    ...emitting,
    emitterFlowLph,
    flowLph: emitting.emitters * emitterFlowLph,
    ...lineEfficiency(line, zoneWide(context)),
    ...hydraulicsOf(line, context.units),
  };
}

function zoneWide({ efficiency, efficiencyBasis }: LineContext) {
  return efficiency === undefined || efficiencyBasis === undefined ? undefined : { efficiency, efficiencyBasis };
}

/** In order of their first days. The same list wherever the same lines lie under the same circumstances. */
export function linesOf(lines: readonly PlanLine[], context: LineContext): readonly GardenLine[] {
  return laidLines(lines, whatMatters(lines, context));
}

const laidLines = memoizeFew((lines: readonly PlanLine[], context: LineContext) =>
  lineOrder(lines, context.firstDay).flatMap((index) => {
    const line = lines[index];
    return line === undefined ? [] : [lineOf(line, context)];
  }),
);

/** Stands in for what lines do not hang on. */
const NO_MATTER = 0;

function whatMatters(
  lines: readonly PlanLine[],
  { units, firstDay, plants, canopyDiameterM, efficiency, efficiencyBasis }: LineContext,
): LineContext {
  const isLoop = (line: PlanLine) => line.kind === 'dripline' && line.layout.kind === 'loops';
  const areLoops = lines.some(isLoop);
  return {
    units,
    firstDay: lines.some(({ from }) => from === undefined) ? firstDay : NO_MATTER,
    plants: areLoops || lines.some(({ kind }) => LINE_KINDS[kind].emitters === 'each-plant') ? plants : undefined,
    canopyDiameterM: areLoops ? canopyDiameterM : NO_MATTER,
    efficiency,
    efficiencyBasis,
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
      const spacings = (runLengthM / spacingM) * (1 + SPACING_TOLERANCE);
      // The tube of a loop is cut to fit round its plant.
      const perRun = line.layout.kind === 'loops' ? Math.max(1, Math.round(spacings)) : Math.floor(spacings);
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

type SolidLine = Extract<PlanLine, { kind: 'solid' }>;

/** It has no emitters: the rest stands there unread. */
function solidTube(line: SolidLine, units: UnitSystem): Hydraulics & Pick<GardenLine, 'lengthM'> {
  const lengthM = inSi(line.length, 'length', units);
  return {
    ...hydraulicsOf({ risePercent: line.risePercent }, units),
    insideDiameterMm: inSi(line.insideDiameter, 'bore', units) ?? DEFAULTS.solidInsideDiameterMm,
    ...(lengthM === undefined ? {} : { lengthM }),
  };
}

type Hydraulics = Omit<
  GardenLine,
  'from' | 'to' | 'efficiency' | 'efficiencyBasis' | 'kind' | 'flowLph' | 'emitterFlowLph' | keyof Emitting
>;

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
