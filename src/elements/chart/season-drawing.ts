/**
 * The chart's canvas. This module alone imports Chart.js, and only the pieces that are used; the element loads it when
 * it first has something to draw, so that a page without a chart never fetches it.
 */
import { Chart, type ChartDataset, Filler, LinearScale, LineController, LineElement, PointElement } from 'chart.js';
import type { ChartLines, ChartPoint } from './chart-lines.ts';
import { type ChartLook, chartOptions } from './chart-options.ts';
import { type Motif, motifPattern } from './motif.ts';
import { isApart, type ReserveLine } from './reserve.ts';
import { type WeekMark, weekMarkPlugin } from './week-mark.ts';

Chart.register(LineController, LineElement, PointElement, LinearScale, Filler);

type Edge = ChartDataset<'line', ChartPoint[]>;

/** A canvas that follows the lines, colours and weeks it is given. `destroy` it before its canvas leaves the page. */
export class SeasonDrawing {
  readonly canvas: HTMLCanvasElement;
  readonly #chart: Chart<'line', ChartPoint[]>;
  readonly #mark: WeekMark = { pointed: undefined, selected: undefined, colour: 'currentcolor' };
  #look: ChartLook;

  constructor(canvas: HTMLCanvasElement, lines: ChartLines, look: ChartLook) {
    this.canvas = canvas;
    this.#look = look;
    this.#mark.colour = look.colours.ink;
    this.#chart = new Chart<'line', ChartPoint[]>(canvas, {
      type: 'line',
      data: { datasets: this.#edges(lines) },
      options: { ...chartOptions(look), animation: false },
      plugins: [weekMarkPlugin(this.#mark)],
    });
  }

  /** Draws other lines, in another look; moves there over a moment where `look.animate` allows it. */
  show(lines: ChartLines, look: ChartLook): void {
    this.#look = look;
    this.#mark.colour = look.colours.ink;
    this.#chart.options = chartOptions(look);
    const datasets = this.#chart.data.datasets;
    for (const [index, edge] of this.#edges(lines).entries()) Object.assign(datasets[index] ?? {}, edge);
    this.#chart.update(look.animate ? undefined : 'none');
  }

  mark(pointed: number | undefined, selected: number | undefined): void {
    if (this.#mark.pointed === pointed && this.#mark.selected === selected) return;
    Object.assign(this.#mark, { pointed, selected });
    this.#chart.draw();
  }

  /** The week under a point of the screen, held inside the season. */
  weekAt(clientX: number): number {
    const left = this.canvas.getBoundingClientRect().left;
    const value = this.#chart.scales['x']?.getValueForPixel(clientX - left) ?? 0;
    return Math.min(Math.max(Math.floor(value), 0), this.#look.weeks - 1);
  }

  /** A fixed size for paper, which never tells a canvas how large it is; without one, back to the place it stands in. */
  resize(width?: number, height?: number): void {
    this.#chart.resize(width, height);
  }

  destroy(): void {
    this.#chart.destroy();
  }

  /** First is drawn last, on top. */
  #edges(lines: ChartLines): Edge[] {
    const { demand, met, fromSoil, irrigation, rain, notKept } = lines;
    const { colours, pixelRatio, reserve } = this.#look;
    const fill = (motif: Motif, colour: string) => motifPattern(motif, colour, pixelRatio) ?? colour;
    return [
      {
        data: [...notKept],
        borderColor: colours.quiet,
        borderWidth: 1,
        fill: { target: '+1', above: fill('hatch', colours.rest), below: 'transparent' },
      },
      {
        data: [...demand],
        borderColor: colours.ink,
        borderWidth: 2.5,
        fill: { target: '+1', above: fill('hatch', colours.short), below: 'transparent' },
      },
      { data: [...met], borderWidth: 0, fill: false },
      area(fromSoil, colours.quiet, fill('rules', colours.quiet), '+1'),
      area(irrigation, colours.water, fill('solid', colours.water), '+1'),
      area(rain, colours.rain, fill('dots', colours.rain), 'origin'),
      ...reserveEdges(reserve, lines, this.#look),
      ...bandEdges(lines, this.#look),
    ];
  }
}

/** The line of what is had, and of what is used of it: always two, so that a drawing finds its lines again. */
function reserveEdges(reserve: ReserveLine | undefined, { weeks, meter }: ChartLines, { colours }: ChartLook): Edge[] {
  const isAbove = isApart(reserve);
  const axis = isAbove ? { yAxisID: 'reserve' } : {};
  const bound = reserve?.bound ?? 0;
  const used = isAbove ? fromTheStart(reserve.points) : reserve && meter;
  return [
    {
      ...axis,
      data: reserve === undefined ? [] : [0, weeks].map((x) => ({ x, y: bound })),
      order: -1,
      borderColor: colours.ink,
      borderWidth: 1.5,
      borderDash: [6, 4],
      fill: false,
    },
    {
      ...axis,
      data: [...(used ?? [])],
      order: -1,
      borderColor: colours.water,
      borderWidth: 2,
      borderDash: [2, 3],
      stepped: reserve?.kind === 'weekly-allowance' ? 'after' : false,
      fill: false,
    },
  ];
}

/** The plan's own line within the band of years: always four edges, so that a drawing finds its lines again. */
function bandEdges({ meter }: ChartLines, { band, colours }: ChartLook): Edge[] {
  const edge = (data: readonly ChartPoint[] | undefined, more: Partial<Edge>): Edge => ({
    data: [...(data ?? [])],
    order: -1,
    borderColor: colours.water,
    borderWidth: 1,
    fill: false,
    ...more,
  });
  return [
    edge(band && meter, { borderWidth: 2.5 }),
    edge(band?.middle, { borderDash: [4, 4] }),
    edge(band?.most, { fill: { target: '+1', above: colours.band, below: colours.band } }),
    edge(band?.least, {}),
  ];
}

function fromTheStart(points: readonly ChartPoint[]): readonly ChartPoint[] {
  const [first] = points;
  return first === undefined ? [] : [{ x: 0, y: first.y }, ...points];
}

function area(edge: readonly ChartPoint[], borderColor: string, fill: CanvasPattern | string, target: string): Edge {
  return {
    data: [...edge],
    borderColor,
    borderWidth: 1,
    backgroundColor: fill,
    fill: { target, above: fill, below: fill },
  };
}
