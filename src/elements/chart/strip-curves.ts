/** The running totals as curves over the strip's weeks: one scale, zero at the foot, every edge once. */
import { html, nothing, svg, type TemplateResult } from 'lit';
import type { Cumulative } from '../../engine/season/cumulative.ts';
import { fromSi, toSi, type UnitSystem } from '../../engine/units.ts';
import { chartWords } from '../../language/en/chart.ts';
import { formatQuantity } from '../../language/format/quantity.ts';
import type { Reader } from '../../language/reader.ts';
import { niceStep } from './nice-step.ts';

/** Units of the drawing from foot to top: it is stretched to any height. */
const HEIGHT = 1000;
/** An area that is lower at its end has no room for its name there. */
const LEAST_LABELLED = 0.12;
/** A week in which so much of what is needed does not arrive is drawn as short. */
const LEAST_SHORT_SHARE = 0.02;

interface Edges {
  readonly weeks: number;
  readonly most: number;
  readonly rain: readonly number[];
  readonly kept: readonly number[];
  readonly demand: readonly number[];
  readonly top: readonly number[];
  readonly meter: readonly number[];
}

/** Litres at each bound of a week, from the first to the last. */
function edgesOf(totals: Cumulative, allowanceLitres: number): Edges {
  const line = (litresAt: (week: number) => number) => [
    0,
    ...Array.from({ length: totals.weeks }, (_, week) => litresAt(week)),
  ];
  const at = (sums: Float64Array, week: number) => sums[week] ?? 0;
  const rain = line((week) => at(totals.rain, week));
  const kept = line((week) => at(totals.rain, week) + at(totals.irrigation, week) + at(totals.fromSoil, week));
  const demand = line((week) => at(totals.demand, week));
  const top = line(
    (week) =>
      Math.max(at(totals.demand, week), kept[week + 1] ?? 0) +
      at(totals.irrigationGross, week) -
      at(totals.irrigation, week),
  );
  const most = Math.max(1, allowanceLitres, ...top);
  const meter = line((week) => at(totals.irrigationGross, week));
  return { weeks: totals.weeks, most, rain, kept, demand, top, meter };
}

/** `18.2,540 L…`: a line through the values. */
function points(values: readonly number[], most: number): readonly string[] {
  return values.map((value, week) => `${week},${Math.round(HEIGHT * (1 - value / most))}`);
}

function area(upper: readonly number[], lower: readonly number[], most: number): string {
  return `M${points(upper, most).join('L')}L${points(lower, most).toReversed().join('L')}Z`;
}

/** The same as a shape of CSS: a hatch would be stretched with the drawing. */
function clip(upper: readonly number[], lower: readonly number[], most: number): string {
  const last = upper.length - 1;
  const at = (values: readonly number[]) =>
    values.map((value, week) => `${(100 * week) / last}% ${(100 * (1 - value / most)).toFixed(2)}%`);
  return `polygon(${[...at(upper), ...at(lower).toReversed()].join(', ')})`;
}

/** Round volumes of the plan's unit, two or three up to the top, L. */
function ticksUpTo(mostLitres: number, units: UnitSystem): readonly number[] {
  const most = fromSi(mostLitres, 'volume', units);
  const step = niceStep(most / 3);
  return Array.from({ length: Math.floor((0.98 * most) / step) }, (_, at) => toSi((at + 1) * step, 'volume', units));
}

/** Pieces of the line of demand along which the plants go short. */
function shortPieces({ unmet, demand, weeks }: Cumulative, edges: Edges): string {
  const gain = (sums: Float64Array, week: number) => (sums[week] ?? 0) - (sums[week - 1] ?? 0);
  const line = points(edges.demand, edges.most);
  return Array.from({ length: weeks }, (_, week) => week)
    .filter((week) => gain(demand, week) > 0 && gain(unmet, week) >= LEAST_SHORT_SHARE * gain(demand, week))
    .map((week) => `M${line[week]}L${line[week + 1]}`)
    .join('');
}

/** `allowanceLitres` of the season, where there is one: a level line, against the line of the meter. */
export function stripCurves(totals: Cumulative, reader: Reader, allowanceLitres?: number): TemplateResult {
  const edges = edgesOf(totals, allowanceLitres ?? 0);
  const { weeks, most, rain, kept, demand, top, meter } = edges;
  const zero = rain.map(() => 0);
  const ticks = ticksUpTo(most, reader.units);
  const volume = (litres: number) => formatQuantity(litres, 'volume', reader);
  return html`<div class="rest" .style=${`clip-path: ${clip(top, demand, most)}`}></div>
    <svg class="areas" viewBox="0 0 ${weeks} ${HEIGHT}" preserveAspectRatio="none" aria-hidden="true">
      ${svg`<path class="rain" d=${area(rain, zero, most)} />
        <path class="kept" d=${area(kept, rain, most)} />
        ${ticks.map((litres) => svg`<path class="tick" d="M0,${HEIGHT * (1 - litres / most)}H${weeks}" />`)}
        <path class="top" d="M${points(top, most).join('L')}" />
        <path class="demand" d="M${points(demand, most).join('L')}" />
        <path class="short" d=${shortPieces(totals, edges)} />
        ${
          allowanceLitres === undefined
            ? nothing
            : svg`<path class="allowance" d="M0,${HEIGHT * (1 - allowanceLitres / most)}H${weeks}" />
              <path class="meter" d="M${points(meter, most).join('L')}" />`
        }`}
    </svg>
    <div class="scale" aria-hidden="true">
      ${ticks.map((litres) => html`<span .style=${`inset-block-end: ${(100 * litres) / most}%`}>${volume(litres)}</span>`)}
    </div>
    ${labels(totals, edges, reader, allowanceLitres !== undefined)}
    ${
      allowanceLitres === undefined
        ? nothing
        : html`<span class="label allowance" aria-hidden="true" .style=${`inset-block-end: ${(100 * allowanceLitres) / most}%`}>${chartWords(reader.language).names.bound.allowance}
            <b>${volume(allowanceLitres)}</b></span>`
    }`;
}

interface NamedArea {
  readonly kind: 'rain' | 'kept' | 'notKept';
  readonly litres: number;
}

/** The areas, from the foot up, with what they come to by the season's end. */
function areasOf(totals: Cumulative): readonly NamedArea[] {
  const at = (sums: Float64Array) => sums[totals.weeks - 1] ?? 0;
  const [kept, metered] = [at(totals.irrigation), at(totals.irrigationGross)];
  return [
    { kind: 'rain', litres: at(totals.rain) },
    { kind: 'kept', litres: kept },
    { kind: 'notKept', litres: metered - kept },
  ];
}

/** Their names above the drawing, for where they are narrower than these. */
export function areaLines(totals: Cumulative, reader: Reader): readonly TemplateResult[] {
  const { names } = chartWords(reader.language);
  return areasOf(totals).map(
    ({ kind, litres }) =>
      html`<p class=${`line area ${kind}`} aria-hidden="true">${names[kind]} <b>${formatQuantity(litres, 'volume', reader)}</b></p>`,
  );
}

/** The larger part of an area that a line crosses. */
function besideLine(line: number, from: number, to: number): readonly [from: number, to: number] {
  if (line <= from || line >= to) return [from, to];
  return line - from > to - line ? [from, line] : [line, to];
}

/** The names of the areas, at their right ends, each in its own. */
function labels(totals: Cumulative, edges: Edges, reader: Reader, hasMeter: boolean): TemplateResult {
  const { most, rain, kept, demand, top, weeks, meter } = edges;
  const { names } = chartWords(reader.language);
  const end = weeks;
  const at = (values: readonly number[]) => (values[end] ?? 0) / most;
  const label = ({ kind, litres }: NamedArea, [from, to]: readonly [number, number]) =>
    to - from < LEAST_LABELLED
      ? nothing
      : html`<span class=${`label ${kind}`} .style=${`inset-block-end: ${50 * (from + to)}%`}>${names[kind]}
          <b>${formatQuantity(litres, 'volume', reader)}</b></span>`;
  const spans: Readonly<Record<NamedArea['kind'], readonly [from: number, to: number]>> = {
    rain: [0, at(rain)],
    kept: hasMeter ? besideLine(at(meter), at(rain), at(kept)) : [at(rain), at(kept)],
    notKept: [at(demand), at(top)],
  };
  return html`<div class="labels" aria-hidden="true">${areasOf(totals).map((each) => label(each, spans[each.kind]))}</div>`;
}
