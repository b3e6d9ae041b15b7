/** One planting's season drawn: what it needs against what it gets, as a whole and week by week. */
import { html, svg, type TemplateResult } from 'lit';
import type { PlantingComparison } from '../../engine/mix/compare-zone.ts';
import type { MonthStart } from '../../language/format/month-starts.ts';

/** Of the drawings' own units. */
const BAR_WIDTH = 200;
const BAR_HEIGHT = 10;
const STRIP = { width: 320, height: 62, base: 40, mark: 44, months: 58 } as const;

/** The stripes of what is lost: a vertical hatch, which no stretching of a bar turns. Once in a shadow root. */
export const HATCH_ID = 'lost-water';
export const hatchDefinition = html`<svg class="definitions" aria-hidden="true" width="0" height="0">
  <defs>
    <pattern id=${HATCH_ID} width="4" height="4" patternUnits="userSpaceOnUse">
      <rect class="hatch-ground" width="4" height="4" />
      <rect class="hatch-line" width="1.8" height="4" />
    </pattern>
  </defs>
</svg>`;

/** `most`: the depth, mm, that fills the bar's whole width. */
export function needBar(planting: PlantingComparison, most: number): TemplateResult {
  const width = share(planting.neededLitres / planting.areaM2, most) * BAR_WIDTH;
  return bar(svg`<rect class="need" x="0.5" y="0.5" width=${Math.max(0, width - 1)} height=${BAR_HEIGHT - 1} />`);
}

export function receivedBar(planting: PlantingComparison, most: number): TemplateResult {
  const { receivedLitres, drainedLitres, areaM2 } = planting;
  const stays = share((receivedLitres - drainedLitres) / areaM2, most) * BAR_WIDTH;
  const lost = share(drainedLitres / areaM2, most) * BAR_WIDTH;
  return bar(svg`<rect class="stays" width=${stays} height=${BAR_HEIGHT} />
    <rect class="lost" fill="url(#${HATCH_ID})" x=${stays} width=${lost} height=${BAR_HEIGHT} />`);
}

function bar(content: TemplateResult): TemplateResult {
  return html`<svg class="bar" viewBox="0 0 ${BAR_WIDTH} ${BAR_HEIGHT}" preserveAspectRatio="none" aria-hidden="true">
    ${content}
  </svg>`;
}

/** `most`: the depth of a week, mm, that fills the strip's height. `label` says what the drawing shows. */
export function weekStrip(
  planting: PlantingComparison,
  { most, label, months }: { readonly most: number; readonly label: string; readonly months: readonly MonthStart[] },
): TemplateResult {
  const weeks = planting.neededMm.length;
  const column = STRIP.width / weeks;
  const heightOf = (mm: number) => share(mm, most) * STRIP.base;
  const { stays, lost, short } = weekShapes(planting, column, heightOf);
  return html`<svg class="strip" viewBox="0 0 ${STRIP.width} ${STRIP.height}" role="img" aria-label=${label}>
    <path class="stays" d=${stays} />
    <path class="lost" fill="url(#${HATCH_ID})" d=${lost} />
    <path class="short" d=${short} />
    <path class="need" d=${needLine(planting.neededMm, column, heightOf)} />
    <path class="base" d="M0 ${STRIP.base}H${STRIP.width}" />
    ${months.map(({ week, label: month }) => svg`<text x=${week * column} y=${STRIP.months}>${month}</text>`)}
  </svg>`;
}

/** One outline for all weeks: a season of many plantings draws at once. */
function weekShapes(
  { receivedMm, drainedMm, shortDays }: PlantingComparison,
  column: number,
  heightOf: (mm: number) => number,
): { readonly stays: string; readonly lost: string; readonly short: string } {
  const gap = column * 0.12;
  const width = column - 2 * gap;
  let [stays, lost, short] = ['', '', ''];
  for (const [week, received] of receivedMm.entries()) {
    const left = week * column + gap;
    const lostHeight = heightOf(drainedMm[week] as number);
    const staysHeight = Math.max(0, heightOf(received) - lostHeight);
    stays += rectangle(left, STRIP.base - staysHeight, width, staysHeight);
    lost += rectangle(left, STRIP.base - staysHeight - lostHeight, width, lostHeight);
    if ((shortDays[week] as number) > 0)
      short += `M${shown(left)} ${STRIP.mark}h${shown(width)}l${shown(-width / 2)} 5z`;
  }
  return { stays, lost, short };
}

function rectangle(left: number, top: number, width: number, height: number): string {
  return height === 0 ? '' : `M${shown(left)} ${shown(top)}h${shown(width)}v${shown(height)}h${shown(-width)}z`;
}

const shown = (length: number): string => length.toFixed(2);

/** A step for each week. */
function needLine(neededMm: Float64Array, column: number, heightOf: (mm: number) => number): string {
  return Array.from(neededMm, (mm, week) => {
    const y = shown(STRIP.base - heightOf(mm));
    return `${week === 0 ? 'M' : 'L'}${shown(week * column)} ${y}H${shown((week + 1) * column)}`;
  }).join('');
}

function share(value: number, most: number): number {
  return most > 0 ? Math.min(1, Math.max(0, value / most)) : 0;
}
