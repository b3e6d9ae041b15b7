/** What the lines of a planting give together, day by day: at the pressure that is there, where one is known. */
import type { DayNumber } from '../calendar.ts';
import type { GardenLine, GardenPlanting, PlantingFlow, SupplySource } from '../garden.ts';
import { sourceOn } from '../supply/source-on.ts';
import { feedingPressure } from './feeding-pressure.ts';
import { lineFlowLph } from './line-profile.ts';

/** Of a planting, all that its flows hang on. */
export type FlowGround = Pick<GardenPlanting, 'lines' | 'areaM2' | 'plants' | 'from' | 'to'>;

export interface FlowGiven {
  readonly sources: readonly Pick<SupplySource, 'from' | 'pressureKpa'>[];
  /** Of lines without one of their own, 0..1. */
  readonly efficiency: number;
}

/** Whether a line lies on a day. */
export function liesOn({ from, to = Number.POSITIVE_INFINITY }: GardenLine, day: DayNumber): boolean {
  return from <= day && day <= to;
}

/**
 * In the order of their days in the ground, each as long as the same lines lie and the same pressure feeds them; days without an
 * emitter are left out.
 *
 * Lines that lie at once are fed side by side, each run for itself, at the source's pressure less what the solid lines in front of
 * them lose (`feedingPressure`). Where no pressure is known each gives its nominal flow. Net over gross is the lines' own
 * efficiency, each by its flow.
 */
export function plantingFlows(ground: FlowGround, given: FlowGiven): readonly PlantingFlow[] {
  const { lines, from, to } = ground;
  const changes = [
    from,
    ...lines.flatMap((line) => (line.to === undefined ? [line.from] : [line.from, line.to + 1])),
    ...given.sources.map((source) => source.from),
  ];
  const starts = [...new Set(changes)].filter((day) => day >= from && day <= to).sort((one, other) => one - other);
  const known = new Map<string, GivenFlow>();
  const flows: PlantingFlow[] = [];
  for (const [index, start] of starts.entries()) {
    const lying = lines.map((line) => liesOn(line, start));
    if (!lines.some(({ emitters }, at) => lying[at] && emitters > 0)) continue;
    const pressureKpa = sourceOn(given, start)?.pressureKpa;
    const key = `${lying} ${pressureKpa}`;
    const flow = known.get(key) ?? alikeFlow(ground, lying, pressureKpa, given.efficiency);
    known.set(key, flow);
    const end = (starts[index + 1] ?? to + 1) - 1;
    const before = flows.at(-1);
    const isSame = before?.to === start - 1 && before.linesLph === flow.linesLph;
    if (isSame) flows[flows.length - 1] = flowFrom(before.from, end, flow);
    else flows.push(flowFrom(start, end, flow));
  }
  // Every planting keeps its own: without the room in which they were gathered.
  return flows.slice();
}

type GivenFlow = Omit<PlantingFlow, 'from' | 'to' | 'wettedShare'>;

/** Each field by its name: spread ones take a third more memory. */
function flowFrom(
  from: DayNumber,
  to: DayNumber,
  { flowLph, efficiency, pressureKpa, linesLph }: GivenFlow,
): PlantingFlow {
  return { from, to, flowLph, efficiency, pressureKpa, linesLph };
}

/** Of lines at a known pressure, by all that they hang on. */
const solved = new Map<string, GivenFlow>();

/** More than most gardens have of lines that differ. */
const MOST_SOLVED = 1000;

/** Lines that are laid alike give the same: they are solved once. */
function alikeFlow(ground: FlowGround, lying: readonly boolean[], sourceKpa: number | undefined, efficiency: number) {
  if (sourceKpa === undefined) return flowOf(ground, lying, sourceKpa, efficiency);
  const { lines, areaM2, plants } = ground;
  const laid = lines.map((line, at) => (lying[at] ? { ...line, from: 0, to: 0 } : line.efficiency));
  // How emitters stand that are set one by one is estimated from their ground.
  const estimated = lines.some(({ emitters, runs }) => emitters > 0 && runs === undefined) ? [areaM2, plants] : [];
  const key = JSON.stringify([sourceKpa, efficiency, laid, estimated]);
  const flow = solved.get(key) ?? flowOf(ground, lying, sourceKpa, efficiency);
  if (solved.size >= MOST_SOLVED) solved.clear();
  solved.set(key, flow);
  return flow;
}

function flowOf(
  ground: FlowGround,
  lying: readonly boolean[],
  sourceKpa: number | undefined,
  efficiency: number,
): GivenFlow {
  const { lines } = ground;
  const flowsAt = (kpa: number | undefined) =>
    lines.map((line, at) => {
      if (!lying[at]) return 0;
      return kpa === undefined ? line.flowLph : lineFlowLph(line, ground, kpa);
    });
  const fed =
    sourceKpa === undefined
      ? undefined
      : feedingPressure({
          sourceKpa,
          solids: lines.filter(({ kind }, at) => kind === 'solid' && lying[at]),
          flowLphAt: (kpa) => sum(flowsAt(kpa)),
        });
  const pressureKpa = fed?.kpa;
  const linesLph = flowsAt(pressureKpa).map((flowLph) => flowLph * (fed?.share ?? 1));
  return {
    flowLph: sum(linesLph),
    efficiency: weighted(
      lines.map((line) => line.efficiency ?? efficiency),
      linesLph,
      efficiency,
    ),
    pressureKpa,
    linesLph,
  };
}

/** Of equal ones that very one, to the last digit. */
function weighted(efficiencies: readonly number[], flowsLph: readonly number[], usual: number): number {
  const flowing = efficiencies.filter((_, at) => (flowsLph[at] as number) > 0);
  const [first = usual] = flowing;
  if (flowing.every((each) => each === first)) return first;
  return sum(efficiencies.map((each, at) => each * (flowsLph[at] as number))) / sum(flowsLph);
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}
