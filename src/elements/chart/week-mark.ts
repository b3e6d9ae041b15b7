import type { Chart, Plugin } from 'chart.js';

/** A band behind the week that a reader points at, and one behind the week that is selected. */
export interface WeekMark {
  pointed: number | undefined;
  selected: number | undefined;
  colour: string;
}

/** Reads `mark` whenever the chart is drawn. */
export function weekMarkPlugin(mark: Readonly<WeekMark>): Plugin<'line'> {
  return {
    id: 'runnel-week-mark',
    beforeDatasetsDraw(chart) {
      if (mark.selected !== undefined) drawBand(chart, mark.selected, mark.colour, 0.16);
    },
    afterDatasetsDraw(chart) {
      if (mark.selected !== undefined) drawEdges(chart, mark.selected, mark.colour, 0.9);
      if (mark.pointed !== undefined) drawEdges(chart, mark.pointed, mark.colour, 0.5);
    },
  };
}

function drawBand(chart: Chart<'line'>, week: number, colour: string, alpha: number): void {
  const { ctx, chartArea } = chart;
  const [left, right] = edgesOf(chart, week);
  ctx.save();
  ctx.globalAlpha = alpha;
  ctx.fillStyle = colour;
  ctx.fillRect(left, chartArea.top, right - left, chartArea.height);
  ctx.restore();
}

function drawEdges(chart: Chart<'line'>, week: number, colour: string, alpha: number): void {
  const { ctx, chartArea } = chart;
  ctx.save();
  ctx.globalAlpha = alpha;
  ctx.strokeStyle = colour;
  ctx.lineWidth = 1;
  ctx.beginPath();
  for (const x of edgesOf(chart, week)) {
    ctx.moveTo(Math.round(x) + 0.5, chartArea.top);
    ctx.lineTo(Math.round(x) + 0.5, chartArea.bottom);
  }
  ctx.stroke();
  ctx.restore();
}

function edgesOf(chart: Chart<'line'>, week: number): [left: number, right: number] {
  const axis = chart.scales['x'];
  return [axis?.getPixelForValue(week) ?? 0, axis?.getPixelForValue(week + 1) ?? 0];
}
