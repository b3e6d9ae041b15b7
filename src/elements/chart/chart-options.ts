import type { ChartOptions, Scale } from 'chart.js';
import type { MonthStart } from '../../language/format/month-starts.ts';
import { isApart, type ReserveLine } from './reserve.ts';
import type { BandLines } from './year-band-lines.ts';

export interface ChartColours {
  readonly ink: string;
  readonly quiet: string;
  readonly line: string;
  readonly water: string;
  readonly rain: string;
  readonly short: string;
  readonly rest: string;
  readonly band: string;
}

/** All that a drawing takes from the page around it. */
export interface ChartLook {
  readonly weeks: number;
  readonly months: readonly MonthStart[];
  readonly colours: ChartColours;
  readonly font: { readonly family: string; readonly size: number };
  readonly pixelRatio: number;
  readonly animate: boolean;
  /** Writes a value of the volume axis, with its unit. */
  readonly volume: (value: number) => string;
  /** An allowance of the season lies in the drawing; a tank or an allowance of a week has a drawing above, on the same weeks. */
  readonly reserve: ReserveLine | undefined;
  /** Wet, middle and dry years. */
  readonly band: BandLines | undefined;
  /** Room before the first week, so that it stands under the first week of the sheet, CSS pixels. */
  readonly leadPx: number | undefined;
}

const MOMENT_MS = 350;

/** In a drawing that is narrower, weeks begin where its own axis ends. */
const LEAST_WIDTHS_OF_LEAD = 3;

type ScaleOptions = NonNullable<NonNullable<ChartOptions<'line'>['scales']>[string]>;

export function chartOptions(look: ChartLook): ChartOptions<'line'> {
  const { colours, months, weeks } = look;
  const label = { color: colours.quiet, font: { ...look.font } };
  return {
    responsive: true,
    maintainAspectRatio: false,
    devicePixelRatio: look.pixelRatio,
    // The element listens itself, and writes what it hears beside the chart.
    events: [],
    parsing: false,
    normalized: true,
    animation: look.animate ? { duration: MOMENT_MS } : false,
    elements: { point: { radius: 0, hitRadius: 0 }, line: { tension: 0, borderJoinStyle: 'round' } },
    scales: {
      x: {
        type: 'linear',
        min: 0,
        max: weeks,
        border: { color: colours.quiet },
        grid: { color: colours.line, tickLength: 6 },
        afterBuildTicks: (axis) => {
          axis.ticks = months.map(({ week }) => ({ value: week }));
        },
        ticks: {
          ...label,
          align: 'start',
          maxRotation: 0,
          autoSkipPadding: 8,
          callback: (value) => months.find(({ week }) => week === value)?.label ?? '',
        },
      },
      y: {
        type: 'linear',
        position: 'left',
        stack: 'volumes',
        stackWeight: 4,
        beginAtZero: true,
        afterFit: leadTo(look.leadPx),
        border: { display: false },
        grid: { color: colours.line, drawTicks: false },
        ticks: { ...label, padding: 6, maxTicksLimit: 6, callback: (value) => look.volume(Number(value)) },
      },
      ...(isApart(look.reserve) ? { reserve: scaleAbove(look, look.reserve) } : {}),
    },
  };
}

/** A drawing above the first: its figures would be lost on the scale of the whole season. It names its bound alone. */
function scaleAbove({ colours, font, leadPx, volume }: ChartLook, { most, bound }: ReserveLine): ScaleOptions {
  return {
    type: 'linear',
    axis: 'y',
    position: 'left',
    stack: 'volumes',
    stackWeight: 1,
    min: 0,
    max: most,
    afterFit: leadTo(leadPx),
    afterBuildTicks: (axis) => {
      axis.ticks = [{ value: bound }];
    },
    border: { display: false },
    grid: { color: colours.line, drawTicks: false },
    ticks: {
      color: colours.quiet,
      font: { ...font },
      padding: 6,
      callback: (value) => volume(Number(value)),
    },
  };
}

function leadTo(leadPx: number | undefined): (axis: Scale) => void {
  return (axis) => {
    if (leadPx !== undefined && axis.chart.width >= LEAST_WIDTHS_OF_LEAD * leadPx) axis.width = leadPx;
  };
}
