/** A planting cut in two, with half of each run of its lines. */
import type { PlanLine, PlanPlanting } from '../../plan/schema/plan-schema.ts';

export interface Halves {
  readonly first: Pick<PlanPlanting, 'extent' | 'lines'>;
  readonly second: Pick<PlanPlanting, 'extent' | 'lines'>;
}

/** Undefined where there is one plant, emitter or spray that cannot be halved. */
export function halvedPlanting({ extent, lines }: PlanPlanting): Halves | undefined {
  const perPlant = extent.kind === 'canopy';
  const share = perPlant ? Math.ceil(extent.count / 2) / extent.count : 0.5;
  const [first, second] = [share, 1 - share].map((part, index) => {
    const own = lines.map((line) => lineHalf(line, { part, perPlant, isFirst: index === 0 }));
    return { extent: extentPart(extent, part), lines: own.filter((line) => line !== undefined) };
  });
  if (first === undefined || second === undefined || share === 1) return undefined;
  return first.lines.length + second.lines.length < 2 * lines.length ? undefined : { first, second };
}

function extentPart(extent: PlanPlanting['extent'], part: number): PlanPlanting['extent'] {
  switch (extent.kind) {
    case 'area':
      return { ...extent, area: extent.area * part };
    case 'bed':
    case 'rows':
      return { ...extent, length: extent.length * part };
    default:
      return { ...extent, count: Math.round(extent.count * part) };
  }
}

interface Half {
  readonly part: number;
  /** Whether the line's own figures are those of one plant. */
  readonly perPlant: boolean;
  readonly isFirst: boolean;
}

function lineHalf(line: PlanLine, { part, perPlant, isFirst }: Half): PlanLine | undefined {
  switch (line.kind) {
    case 'solid':
      return line;
    case 'point':
      return perPlant ? line : withCount(line, isFirst);
    case 'spray':
      return withCount(line, isFirst);
    case 'dripline':
      return line.layout.kind === 'loops'
        ? line
        : { ...line, layout: { ...line.layout, length: line.layout.length * part } };
    default:
      return line satisfies never;
  }
}

function withCount<Line extends Extract<PlanLine, { count: number }>>(line: Line, isFirst: boolean): Line | undefined {
  const count = isFirst ? Math.ceil(line.count / 2) : Math.floor(line.count / 2);
  return count > 0 ? { ...line, count } : undefined;
}
