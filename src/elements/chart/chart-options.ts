import type { ChartOptions } from 'chart.js';
import type { MonthStart } from '../../language/format/month-starts.ts';
import type { ReserveLine } from './reserve.ts';

export interface ChartColours {
  readonly ink: string;
  readonly quiet: string;
  readonly line: string;
  readonly water: string;
  readonly rain: string;
  readonly short: string;
  readonly reserve: string;
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
  /** Tank level or allowance used, on the axis at the end; undefined where there is neither. */
  readonly reserve: ReserveLine | undefined;
}

const MOMENT_MS = 350;

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
        beginAtZero: true,
        border: { display: false },
        grid: { color: colours.line, drawTicks: false },
        ticks: { ...label, padding: 6, maxTicksLimit: 6, callback: (value) => look.volume(Number(value)) },
      },
      reserve: {
        type: 'linear',
        position: 'right',
        display: look.reserve !== undefined,
        min: 0,
        suggestedMax: look.reserve?.most ?? 1,
        border: { display: false },
        grid: { display: false },
        ticks: {
          ...label,
          color: colours.reserve,
          padding: 6,
          maxTicksLimit: 5,
          callback: (value) => look.volume(Number(value)),
        },
      },
    },
  };
}
