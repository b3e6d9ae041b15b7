import type { GardenLine, GardenPlanting, PlantingFlow } from '../../../engine/garden.ts';
import { elevationLossKpa } from '../../../engine/line/elevation.ts';
import { lineProfile } from '../../../engine/line/line-profile.ts';
import { liesOn } from '../../../engine/line/planting-flows.ts';
import { NOMINAL_PRESSURE_KPA } from '../../../engine/line/usual-pressures.data.ts';
import { VELOCITY_LIMIT_MS, velocityMs } from '../../../engine/line/velocity.ts';
import type { Season } from '../../../engine/season/season.ts';
import { type FlowSpan, flowSpans } from '../flow-spans.ts';
import type { FoundNotice } from '../notice.ts';
import { placeOfSpans } from '../planting-spans.ts';

/** The most that one tube of a planting carries. */
interface TubeFlow {
  readonly lineIndex: number;
  readonly flowLph: number;
  readonly insideDiameterMm: number;
  readonly velocityMs: number;
}

/**
 * Tubes in which water runs faster than 5 ft/s (common practice, no source): one notice a planting, of the tube and the days with the
 * fastest water. A tube without emitters carries what all lines of its planting take.
 */
export function flowTooFast(season: Season): readonly FoundNotice<'flow-too-fast'>[] {
  return flowSpans(season).flatMap((spans): readonly FoundNotice<'flow-too-fast'>[] => {
    const fast = spans
      .map((span) => ({ span, tube: fastestTube(span) }))
      .filter((each): each is { span: FlowSpan; tube: TubeFlow } => (each.tube?.velocityMs ?? 0) > VELOCITY_LIMIT_MS);
    const [worst] = fast.toSorted((one, other) => other.tube.velocityMs - one.tube.velocityMs);
    if (worst === undefined) return [];
    const { lineIndex, flowLph, insideDiameterMm, velocityMs: velocity } = worst.tube;
    return [
      {
        kind: 'flow-too-fast',
        ...placeOfSpans(fast.map(({ span }) => span)),
        lineIndex,
        figures: {
          velocityMs: velocity,
          limitMs: VELOCITY_LIMIT_MS,
          flowLph,
          insideDiameterMm,
          widerDiameterMm: insideDiameterMm * Math.sqrt(velocity / VELOCITY_LIMIT_MS),
        },
      },
    ];
  });
}

function fastestTube({ planting, flow }: FlowSpan): TubeFlow | undefined {
  const tubes = planting.lines.flatMap((line, lineIndex): readonly TubeFlow[] => {
    if (!liesOn(line, flow.from)) return [];
    const flowLph = line.kind === 'solid' ? flow.flowLph : mostInRun(line, planting, flow);
    const { insideDiameterMm } = line;
    return [{ lineIndex, flowLph, insideDiameterMm, velocityMs: velocityMs({ flowLph, insideDiameterMm }) }];
  });
  return tubes.toSorted((one, other) => other.velocityMs - one.velocityMs)[0];
}

/** The most that one run of a line carries anywhere, L/h; not solved where not even all of its emitters at their greatest pressure are too much. */
function mostInRun(
  line: GardenLine,
  planting: GardenPlanting,
  { pressureKpa = NOMINAL_PRESSURE_KPA }: PlantingFlow,
): number {
  const boundLph = mostOfRun(line, pressureKpa);
  if (velocityMs({ flowLph: boundLph, insideDiameterMm: line.insideDiameterMm }) <= VELOCITY_LIMIT_MS) return boundLph;
  const profile = lineProfile(line, planting, pressureKpa);
  return profile?.reachFlowsLph.reduce((most, flow) => Math.max(most, Math.abs(flow)), 0) ?? 0;
}

function mostOfRun(
  { flowLph, runs = 1, lengthM = 0, riseMPerM, compensating, exponent }: GardenLine,
  kpa: number,
): number {
  if (compensating) return flowLph / runs;
  const fallKpa = Math.max(0, elevationLossKpa((-riseMPerM * lengthM) / runs));
  return (flowLph / runs) * (Math.max(0, kpa + fallKpa) / NOMINAL_PRESSURE_KPA) ** exponent;
}
