/** Twelve months of reference ET and rain as a picture; the table beneath has the same figures. */
import { html, svg, type TemplateResult } from 'lit';
import { dayNumberOf } from '../../engine/calendar.ts';
import { monthlyEtoMm } from '../../engine/climate/daily-eto.ts';
import type { Season } from '../../engine/season/season.ts';
import { weatherWords } from '../../language/en/weather.ts';
import type { FormContext } from '../garden/form-context.ts';

const MONTHS = Array.from({ length: 12 }, (_, month) => month);

/** In units of the picture. */
const WIDTH = 480;
const HEIGHT = 190;
const TOP = 12;
const BOTTOM = 158;
const STEP = WIDTH / 12;
const BAR = 18;

/** Whether any month has a figure. */
export function hasClimate({ garden: { site } }: Season): boolean {
  return [...monthlyEtoMm(site), ...site.climate.rainMm].some((mm) => mm > 0);
}

export function climatePicture({ season, reader, format }: FormContext): TemplateResult {
  const say = weatherWords(reader.language).climate;
  const { site } = season.garden;
  const etoMm = monthlyEtoMm(site);
  const { rainMm } = site.climate;
  if (!hasClimate(season)) return html`<p>${say.none}</p>`;
  const most = Math.max(1, ...etoMm, ...rainMm);
  const y = (mm: number) => BOTTOM - ((BOTTOM - TOP) * mm) / most;
  const x = (month: number) => STEP * (month + 0.5);
  const needs = etoMm.map((mm, month) => mm - (rainMm[month] ?? 0));
  const driest = needs.indexOf(Math.max(...needs));
  const finding = say.finding(format, driest, etoMm[driest] ?? 0, rainMm[driest] ?? 0);
  const inSeason = new Set(season.weather.months.calendarMonth);
  const name = (month: number) => format.day(dayNumberOf({ year: 2001, month, dayOfMonth: 1 }), 'month');
  const points = MONTHS.map((month) => `${x(month)},${y(etoMm[month] ?? 0)}`).join(' ');
  return html`<figure class="climate">
    <figcaption>${finding}</figcaption>
    <svg viewBox="0 0 ${WIDTH} ${HEIGHT}" role="img" aria-label=${finding}>
      <line class="ground" x1="0" x2=${WIDTH} y1=${BOTTOM} y2=${BOTTOM}></line>
      ${MONTHS.map(
        (month) => svg`<rect class="rain" x=${x(month) - BAR / 2} width=${BAR} y=${y(rainMm[month] ?? 0)}
            height=${BOTTOM - y(rainMm[month] ?? 0)}></rect>
          <circle class="eto" cx=${x(month)} cy=${y(etoMm[month] ?? 0)} r="3.5"></circle>
          <text x=${x(month)} y=${BOTTOM + 16}>${name(month)}</text>
          ${inSeason.has(month) ? svg`<rect class="season" x=${STEP * month + 1} width=${STEP - 2} y=${BOTTOM + 23} height="5"></rect>` : svg``}`,
      )}
      <polyline class="eto-line" points=${points}></polyline>
    </svg>
    <p class="key">
      <span><i class="eto-key"></i>${say.eto}</span>
      <span><i class="rain-key"></i>${say.rain}</span>
      <span><i class="season-key"></i>${say.season}</span>
    </p>
  </figure>`;
}
