/** Beside the steps: the season as far as it is known, and what of it is assumed. */
import { html, nothing, svg, type TemplateResult } from 'lit';
import { plantingFigure } from '../../engine/season/planting-week.ts';
import type { Season } from '../../engine/season/season.ts';
import { startWords } from '../../language/en/start.ts';
import { seasonDays } from '../../plan/season-weeks.ts';
import { assumedItems } from './assumed-items.ts';
import type { StartContext } from './start-context.ts';

const WIDTH = 360;
const LEFT = 112;
const WEATHER = 66;
const ROW = 19;
const MOST_ROWS = 12;

/** Rain and reference ET of each week, mm. */
export function weatherByWeek({
  weather,
  garden,
}: Season): readonly { readonly rainMm: number; readonly etoMm: number }[] {
  return Array.from({ length: garden.span.weeks }, (_, week) => {
    let [rainMm, etoMm] = [0, 0];
    for (let day = 7 * week; day < 7 * week + 7; day += 1) {
      rainMm += weather.rain.expectedMm[day] ?? 0;
      etoMm += weather.eto.expectedMm[day] ?? 0;
    }
    return { rainMm, etoMm };
  });
}

export const hasWeather = ({ weather }: Season): boolean => weather.eto.expectedMm.some((mm) => mm > 0);

export const sumOf = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0);

export function knownTemplate(context: StartContext): TemplateResult {
  const { plan, season, reader, format } = context;
  const say = startWords(reader.language);
  const weeks = weatherByWeek(season);
  const etoMm = sumOf(weeks.map((week) => week.etoMm));
  const rainMm = sumOf(weeks.map((week) => week.rainMm));
  const { first, last } = seasonDays(plan.season);
  const hasPlace = plan.site.place !== undefined;
  return html`<aside class="known" aria-label=${say.aside}>
    <h3 class="finding">${etoMm > 0 ? say.known.weather(format, etoMm, rainMm) : hasPlace ? say.known.weatherMissing : say.known.none}</h3>
    <p class="quiet small">${etoMm > 0 ? say.known.span(format, first, last, plan.season.weeks) : hasPlace ? say.known.placeKnown : say.known.noWeather}</p>
    ${etoMm > 0 ? picture(context, weeks) : nothing}
    ${assumedList(context)}
  </aside>`;
}

export function assumedList(context: StartContext): TemplateResult {
  const { reader } = context;
  const say = startWords(reader.language).assumptions;
  const items = assumedItems(context);
  return html`<section class="assumptions"><h3>${say.title}</h3>
    ${
      items.length === 0
        ? html`<p class="quiet small">${say.none}</p>`
        : html`<ul>${items.map(
            ({ name, value, change, right }) => html`<li><span class="quiet">${name}</span> <i>${value}</i>
              <span class="does"><button class="plain" aria-label=${say.changeOf(name)} @click=${change}>${say.change}</button>
              <button class="plain" aria-label=${say.rightOf(name)} @click=${right}>${say.right}</button></span></li>`,
          )}</ul>`
    }</section>`;
}

/** Rain as bars, what the sun takes as a line, and under them a row for each planting: what it needs, and what it gets. */
function picture(
  context: StartContext,
  weeks: readonly { readonly rainMm: number; readonly etoMm: number }[],
): TemplateResult {
  const { season, reader } = context;
  const say = startWords(reader.language).known;
  const plantings = season.zones.flatMap((zone) => zone.plantings).slice(0, MOST_ROWS);
  const height = WEATHER + 10 + plantings.length * ROW;
  const step = (WIDTH - LEFT) / weeks.length;
  const most = Math.max(...weeks.flatMap(({ rainMm, etoMm }) => [rainMm, etoMm]), 1);
  const y = (mm: number) => WEATHER - (mm / most) * (WEATHER - 6);
  const line = weeks
    .map(({ etoMm }, week) => `${week === 0 ? `M${LEFT} ` : `H${LEFT + week * step}V`}${y(etoMm)}`)
    .join('');
  const rows = plantings.map((planting, row) => {
    const top = WEATHER + 10 + row * ROW;
    const needs = weeks.map((_, week) => plantingFigure(planting, 'demandMm', week));
    const gets = weeks.map((_, week) => plantingFigure(planting, 'irrigationGrossMm', week));
    const scale = Math.max(...needs, ...gets, 1);
    const bars = weeks.map((_, week) => {
      const need = ((needs[week] ?? 0) / scale) * (ROW - 5);
      const got = ((gets[week] ?? 0) / scale) * (ROW - 5);
      return svg`<rect class="need" x=${LEFT + week * step} y=${top + ROW - 4 - need} width=${step * 0.8} height=${need} /><rect class="got" x=${LEFT + week * step} y=${top + ROW - 4 - got} width=${step * 0.8} height=${got} />`;
    });
    return svg`<text x="0" y=${top + ROW - 6}>${short(planting.planting.name)}</text>${bars}`;
  });
  return html`<svg class="strip" viewBox=${`0 0 ${WIDTH} ${height}`} role="img" aria-label=${say.picture}>
      <text class="eto-name" x="0" y="20">${say.eto}</text><text class="rain-name" x="0" y=${WEATHER - 4}>${say.rain}</text>
      ${weeks.map(({ rainMm }, week) => svg`<rect class="rain" x=${LEFT + week * step} y=${y(rainMm)} width=${step * 0.8} height=${WEATHER - y(rainMm)} />`)}
      <path class="eto" d=${`${line}H${WIDTH}`} />
      ${rows}
    </svg>
    ${plantings.length === 0 ? nothing : html`<p class="key small"><span class="key-need"></span> ${say.needs} <span class="key-got"></span> ${say.gets}</p>`}`;
}

const LONGEST_NAME = 17;
const short = (name: string): string => (name.length > LONGEST_NAME ? `${name.slice(0, LONGEST_NAME - 1)}…` : name);
