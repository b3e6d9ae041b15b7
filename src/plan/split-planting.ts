/** A planting cut in two, each half with its share of the ground and of the lines that lie there. */
import type { PlanLine, PlanPlanting } from './schema/plan-schema.ts';

type Extent = PlanPlanting['extent'];
type Halves<Part> = readonly [Part, Part];

/** What tells the second half from the first. */
export interface SecondHalf {
  readonly id: string;
  readonly name: string;
}

/**
 * Undefined where it cannot be cut: one plant, or emitters that are fewer than the halves. Whole plants, rows and emitters stay whole,
 * so that halves of an odd number are unlike. Both have the days, the need and the shut-off of what they were.
 */
export function splitPlanting(planting: PlanPlanting, second: SecondHalf): Halves<PlanPlanting> | undefined {
  const extents = splitExtent(planting.extent);
  const lines = planting.lines.map((line) => splitLine(line, planting.extent));
  if (extents === undefined || lines.some((line) => line === undefined)) return undefined;
  const { container } = planting;
  const { count } = container ?? {};
  const pots =
    container === undefined || count === undefined ? both(container) : shared({ ...container, count }, 'count');
  if (pots === undefined) return undefined;
  const half = (index: 0 | 1): PlanPlanting => ({
    ...planting,
    extent: extents[index],
    lines: lines.flatMap((line) => (line === undefined ? [] : [line[index]])),
    ...(pots[index] && { container: pots[index] }),
  });
  return [half(0), { ...half(1), ...second }];
}

const both = <Part>(part: Part): Halves<Part> => [part, part];

/** Half of a whole number each, the first the larger; undefined where one of them would be none. */
function shared<Part extends { readonly [Key in Field]: number }, Field extends string>(
  part: Part,
  field: Field,
): Halves<Part> | undefined {
  const whole = part[field];
  const half = (count: number): Part => ({ ...part, [field]: count });
  return whole < 2 ? undefined : [half(Math.ceil(whole / 2)), half(Math.floor(whole / 2))];
}

const halved = <Part extends { readonly [Key in Field]: number }, Field extends string>(
  part: Part,
  field: Field,
): Halves<Part> => both({ ...part, [field]: part[field] / 2 });

function splitExtent(extent: Extent): Halves<Extent> | undefined {
  switch (extent.kind) {
    case 'area':
      return halved(extent, 'area');
    case 'bed':
      return halved(extent, extent.length >= extent.width ? 'length' : 'width');
    case 'rows':
      return shared(extent, 'rows') ?? halved(extent, 'length');
    case 'canopy':
      return shared(extent, 'count');
  }
}

function splitLine(line: PlanLine, extent: Extent): Halves<PlanLine> | undefined {
  switch (line.kind) {
    case 'solid':
      return both(line);
    case 'dripline': {
      const [first, second] = splitLayout(line.layout, extent);
      return [
        { ...line, layout: first },
        { ...line, layout: second },
      ];
    }
    case 'point':
      // Of plants that are counted, each has its own.
      return extent.kind === 'canopy' ? both(line) : shared(line, 'count');
    case 'spray':
      return shared(line, 'count');
  }
}

type Layout = Extract<PlanLine, { kind: 'dripline' }>['layout'];

/** Rows go with the rows of plants where they are as many; others are cut across. */
function splitLayout(layout: Layout, extent: Extent): Halves<Layout> {
  if (layout.kind === 'loops') return both(layout);
  const isByRow = layout.kind === 'rows' && extent.kind === 'rows' && extent.rows === layout.rows;
  return (isByRow ? shared(layout, 'rows') : undefined) ?? halved(layout, 'length');
}
