/** What zones and lines come to: figures that follow from what was typed, shown beside it. */
import type { GardenLine, GardenPlanting } from '../../engine/garden.ts';
import { plantingLine } from '../../engine/line/zone-lines.ts';
import { inletPressureOn } from '../../engine/supply/source-on.ts';
import { formatCount } from '../../language/format/count.ts';
import { formatQuantity } from '../../language/format/quantity.ts';
import type { PlanLine, PlanPlanting, PlanZone } from '../../plan/schema/plan-schema.ts';
import { gardenWords as words } from '../shared/words/garden-words.ts';
import type { FormContext } from './form-context.ts';

/** `3 plantings, 2.4 gpm when all is open`. */
export function zoneSummary({ id }: PlanZone, { season, reading }: FormContext): string {
  const zone = season.garden.zones.find((candidate) => candidate.id === id);
  const flows = (zone?.plantings ?? []).map(({ lines }) => Math.max(0, ...lines.map(({ flowLph }) => flowLph)));
  const flowLpm = flows.reduce((sum, flow) => sum + flow, 0) / 60;
  const count = formatCount(flows.length, words.plantingCount, reading.locale);
  return words.zoneLine(count, formatQuantity(flowLpm, 'supplyFlow', reading));
}

export interface LineSummary {
  readonly flow: string;
  /** Left out where a line has no runs that could be too long. */
  readonly run: string | undefined;
  readonly isTooLong: boolean;
}

/** What one line of a planting gives, and how long a run of it may be at the source's pressure. */
export function lineSummary(planting: PlanPlanting, index: number, context: FormContext): LineSummary | undefined {
  const { season, reading } = context;
  const found = season.garden.zones.flatMap(({ plantings }) => plantings).find(({ id }) => id === planting.id);
  const line = found?.lines[inOrder(planting.lines, index)];
  if (found === undefined || line === undefined || line.flowLph === 0) return undefined;
  const flow = formatQuantity(line.flowLph, 'emitterFlow', reading);
  const rate = formatQuantity(line.flowLph / found.areaM2, 'rate', reading);
  return { flow: words.derivedLine(flow, rate), ...longestRun(found, line, context) };
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
  { season, reading }: FormContext,
): Pick<LineSummary, 'run' | 'isTooLong'> {
  const { span, supply } = season.garden;
  const day = Math.max(line.from, span.firstDay);
  const solved = plantingLine(planting, planting.lines.indexOf(line), inletPressureOn(supply, day));
  if (solved === undefined || line.lengthM === undefined) return { run: undefined, isTooLong: false };
  const laidM = line.lengthM / (line.runs ?? 1);
  const isTooLong = laidM > solved.longest.lengthM;
  const says = isTooLong ? words.tooLong : words.longestRun;
  const length = (m: number) => formatQuantity(m, 'length', reading);
  return { run: says(length(solved.longest.lengthM), length(laidM)), isTooLong };
}
