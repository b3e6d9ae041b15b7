/** How much of a planting's ground its lines wet. */
import type { DayNumber } from '../calendar.ts';
import type { GardenLine, GardenPlanting, PlantingFlow } from '../garden.ts';
import type { SoilTextureId } from '../soil/textures.data.ts';
import { wettedWidthM } from './wetted-width.ts';

export type WettedGround = Pick<GardenPlanting, 'areaM2' | 'lines' | 'flows'> & {
  readonly rootDepthM: number;
  readonly texture: SoilTextureId;
};

/** The least that is computed. */
const LEAST_SHARE = 0.05;

/**
 * Share of a planting's ground that its lines wet at the depth of its roots, 0.05 to 1 in hundredths: that of the flows that last
 * longest, of equally long ones the first. Circles and strips are added up; what one wets beside the ground, or another wets too, is
 * not taken off. 1 where no line ever gives water.
 */
export function wettedShare(ground: WettedGround): number {
  const longest = longestFlow(ground.flows);
  return longest === undefined ? 1 : shareOfFlow(ground, longest);
}

/** The same of the lines that give one flow. */
export function shareOfFlow(ground: WettedGround, flow: PlantingFlow): number {
  const wetM2 = ground.lines.reduce(
    (sum, line, at) => sum + wettedByLineM2(line, flow.linesLph[at] as number, ground),
    0,
  );
  return Math.max(LEAST_SHARE, Math.min(1, Math.round((100 * wetM2) / ground.areaM2) / 100));
}

/**
 * Of each week from a day on the flow that lies on most of its days, within them. A week without any has that of the week before, before
 * that the first that there is.
 */
export function flowsByWeek(
  flows: readonly PlantingFlow[],
  firstDay: DayNumber,
  weeks: number,
): readonly (PlantingFlow | undefined)[] {
  const own = Array.from({ length: weeks }, (_, week) => {
    const first = firstDay + 7 * week;
    const within = flows.map((flow) => ({
      ...flow,
      from: Math.max(flow.from, first),
      to: Math.min(flow.to, first + 6),
    }));
    return longestFlow(within.filter(({ from, to }) => from <= to));
  });
  let lying = flows.find(({ flowLph }) => flowLph > 0);
  return own.map((flow) => {
    lying = flow ?? lying;
    return lying;
  });
}

/** Ground that a line wets while it gives so much, m2: of dripline a strip, or circles where its emitters stand apart. */
export function wettedByLineM2(line: GardenLine, flowLph: number, ground: WettedGround): number {
  if (!(flowLph > 0)) return 0;
  if (line.kind === 'spray') return ground.areaM2;
  const { texture, rootDepthM } = ground;
  const widthM = wettedWidthM({ texture, rootDepthM, flowLph: flowLph / line.emitters });
  const circlesM2 = (line.emitters * Math.PI * widthM ** 2) / 4;
  return line.lengthM === undefined ? circlesM2 : Math.min(circlesM2, line.lengthM * widthM);
}

/** How wide an emitter of each line wets the soil at the depth of the roots where it gives most, m; none of lines that wet nothing or all. */
export function emitterWidthsM(
  { lines, flows, rootZone }: Pick<GardenPlanting, 'lines' | 'flows' | 'rootZone'>,
  texture: SoilTextureId,
): readonly number[] {
  return lines.flatMap(({ kind, emitters }, at) => {
    const flowLph = Math.max(0, ...flows.map(({ linesLph }) => linesLph[at] ?? 0));
    if (kind === 'spray' || emitters === 0 || flowLph === 0) return [];
    return [wettedWidthM({ texture, rootDepthM: rootZone.depthM, flowLph: flowLph / emitters })];
  });
}

/** The flow that lasts longest, of equally long ones the first; undefined where none ever gives water. */
export function longestFlow(flows: readonly PlantingFlow[]): PlantingFlow | undefined {
  const days = ({ from, to }: PlantingFlow) => to - from;
  return flows
    .filter(({ flowLph }) => flowLph > 0)
    .reduce<PlantingFlow | undefined>(
      (longest, flow) => (longest === undefined || days(flow) > days(longest) ? flow : longest),
      undefined,
    );
}
