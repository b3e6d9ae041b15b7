/** What zones and lines come to: figures that follow from what was typed, shown beside it. */
import type { GardenLine, GardenPlanting } from '../../engine/garden.ts';
import { plantingLine } from '../../engine/line/zone-lines.ts';
import { inletPressureOn } from '../../engine/supply/source-on.ts';
import { gardenZonesWords } from '../../language/en/garden-zones.ts';
import type { PlanLine, PlanPlanting, PlanZone } from '../../plan/schema/plan-schema.ts';
import type { FormContext } from './form-context.ts';

/** `3 plantings, 2.4 gpm when all is open`. */
export function zoneSummary({ id }: PlanZone, { season, reader, format }: FormContext): string {
  const zone = season.garden.zones.find((candidate) => candidate.id === id);
  const flows = (zone?.plantings ?? []).map(({ lines }) => Math.max(0, ...lines.map(({ flowLph }) => flowLph)));
  const flowLpm = flows.reduce((sum, flow) => sum + flow, 0) / 60;
  return gardenZonesWords(reader.language).zoneSummary(format, flows.length, flowLpm);
}

export interface LineSummary {
  readonly flow: string;
  /** Undefined where a line has no runs that could be too long. */
  readonly run: string | undefined;
  readonly isTooLong: boolean;
}

/** What one line of a planting gives, and how long a run of it may be at the source's pressure. */
export function lineSummary(planting: PlanPlanting, index: number, context: FormContext): LineSummary | undefined {
  const { season, reader, format } = context;
  const found = season.garden.zones.flatMap(({ plantings }) => plantings).find(({ id }) => id === planting.id);
  const line = found?.lines[inOrder(planting.lines, index)];
  if (found === undefined || line === undefined || line.flowLph === 0) return undefined;
  const flow = gardenZonesWords(reader.language).lineSummary(format, line.flowLph, line.flowLph / found.areaM2);
  return { flow, ...longestRun(found, line, context) };
}

/** The engine has a planting's lines in order of their day, a plan as they were typed. */
function inOrder(lines: readonly PlanLine[], index: number): number {
  const day = (at: number) => lines[at]?.from ?? '';
  return lines
    .map((_, at) => at)
    .toSorted((left, right) => day(left).localeCompare(day(right)))
    .indexOf(index);
}

function longestRun(
  planting: GardenPlanting,
  line: GardenLine,
  { season, reader, format }: FormContext,
): Pick<LineSummary, 'run' | 'isTooLong'> {
  const { span, supply } = season.garden;
  const day = Math.max(line.from, span.firstDay);
  const solved = plantingLine(planting, planting.lines.indexOf(line), inletPressureOn(supply, day));
  if (solved === undefined || line.lengthM === undefined) return { run: undefined, isTooLong: false };
  const laidM = line.lengthM / (line.runs ?? 1);
  const isTooLong = laidM > solved.longest.lengthM;
  const say = gardenZonesWords(reader.language);
  return { run: (isTooLong ? say.runTooLong : say.longestRun)(format, solved.longest.lengthM, laidM), isTooLong };
}
