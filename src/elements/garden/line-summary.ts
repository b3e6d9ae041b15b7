/** What lines come to: figures that follow from what was typed, shown beside it. */
import type { GardenLine, GardenPlanting } from '../../engine/garden.ts';
import { feedOn, plantingLine } from '../../engine/line/zone-lines.ts';
import { gardenZonesWords } from '../../language/en/garden-zones.ts';
import type { PlanPlanting } from '../../plan/schema/plan-schema.ts';
import { lineOrder } from '../../plan/to-garden/line-order.ts';
import type { FormContext } from './form-context.ts';
import { plantingInGarden } from './planting-in-garden.ts';

export interface LineSummary {
  readonly flow: string;
  /** Undefined where a line has no runs that could be too long. */
  readonly run: string | undefined;
  readonly isTooLong: boolean;
}

/** What one line of a planting gives, and how long a run of it may be at the source's pressure. */
export function lineSummary(planting: PlanPlanting, index: number, context: FormContext): LineSummary | undefined {
  const { season, reader, format } = context;
  const found = plantingInGarden(season.garden, planting);
  const line = found?.lines[lineOrder(planting.lines, found.from).indexOf(index)];
  if (found === undefined || line === undefined || line.flowLph === 0) return undefined;
  const flow = gardenZonesWords(reader.language).lineSummary(format, line.flowLph, line.flowLph / found.areaM2);
  return { flow, ...longestRun(found, line, context) };
}

function longestRun(
  planting: GardenPlanting,
  line: GardenLine,
  { season, reader, format }: FormContext,
): Pick<LineSummary, 'run' | 'isTooLong'> {
  const day = Math.max(line.from, planting.from, season.garden.span.firstDay);
  const solved = plantingLine(planting, planting.lines.indexOf(line), feedOn(planting, day));
  if (solved === undefined || line.lengthM === undefined) return { run: undefined, isTooLong: false };
  const laidM = line.lengthM / (line.runs ?? 1);
  const isTooLong = laidM > solved.longest.lengthM;
  const say = gardenZonesWords(reader.language);
  return { run: (isTooLong ? say.runTooLong : say.longestRun)(format, solved.longest.lengthM, laidM), isTooLong };
}
