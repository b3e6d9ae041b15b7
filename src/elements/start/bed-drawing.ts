/** A bed from above with its rows of dripline, to scale. */
import { html, nothing, svg, type TemplateResult } from 'lit';
import { toSi } from '../../engine/units.ts';
import type { PlanLine, PlanPlanting } from '../../plan/schema/plan-schema.ts';
import { sidesM } from '../../plan/usual-lines.ts';
import { plantingInGarden } from '../garden/planting-in-garden.ts';
import type { StartContext } from './start-context.ts';

const WIDTH = 340;
const LEFT = 14;
/** Room for the bed, and for its width beside it. */
const ALONG = 270;
const ACROSS = 110;
/** A bed that is longer for its width is no more than a line, and so many emitters are no dots any more. */
const LONGEST = 12;
const MOST_DOTS = 400;

export function bedDrawing(
  context: StartContext,
  planting: PlanPlanting,
  index: number,
): TemplateResult | typeof nothing {
  const { lines, extent } = planting;
  const line = lines[index];
  if (extent.kind === 'rows' || extent.kind === 'canopy' || !isRows(line)) return nothing;
  const { units } = context.plan;
  const [alongM, acrossM] = sidesM(extent, units);
  const lengthM = toSi(line.layout.length, 'length', units);
  const longest = Math.max(alongM, lengthM);
  if (acrossM <= 0 || longest > LONGEST * acrossM) return nothing;
  const scale = Math.min(ALONG / longest, ACROSS / acrossM);
  const { rows } = line.layout;
  const high = acrossM * scale;
  const emitters = plantingInGarden(context.season.garden, planting)?.lines[index]?.emitters ?? 0;
  const inRow = emitters > MOST_DOTS ? 0 : Math.round(emitters / rows);
  const run = lengthM * scale;
  const y = (row: number) => 3 + ((row + 0.5) / rows) * high;
  const each = Array.from({ length: rows }, (_, row) => {
    const dots = Array.from(
      { length: inRow },
      (__, at) => svg`<circle class="w" cx=${LEFT + ((at + 0.5) / inRow) * run} cy=${y(row)} r="2" />`,
    );
    return svg`<path class="in" d=${`M${LEFT} ${y(row) - 2}h${run}v4h${-run}`} />${dots}`;
  });
  const { format } = context;
  return html`<svg class="drawing bed" viewBox=${`0 0 ${WIDTH} ${high + 24}`} aria-hidden="true">
    <rect class="pl" x=${LEFT} y="3" width=${alongM * scale} height=${high} />
    <path class="so" d=${`M${LEFT} ${y(0)}V${y(rows - 1)}M0 ${y((rows - 1) / 2)}H${LEFT}`} />${each}
    <text x=${LEFT + (alongM * scale) / 2} y=${high + 19} text-anchor="middle">${format.quantity(alongM, 'length')}</text>
    <text x=${LEFT + Math.max(run, alongM * scale) + 8} y=${3 + high / 2 + 4}>${format.quantity(acrossM, 'length')}</text>
  </svg>`;
}

type Rows = Extract<PlanLine, { kind: 'dripline' }> & {
  readonly layout: { readonly kind: 'rows'; readonly rows: number; readonly length: number };
};

const isRows = (line: PlanLine | undefined): line is Rows => line?.kind === 'dripline' && line.layout.kind === 'rows';
