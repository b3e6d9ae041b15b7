/** The season as a picture, as far as it is known: months, weather, water, watering days, and a row for each planting. */
import { html, nothing, type SVGTemplateResult, svg, type TemplateResult } from 'lit';
import { plantingFigure } from '../../engine/season/planting-week.ts';
import { weekMask } from '../../engine/season/week-masks.ts';
import { startKnownWords } from '../../language/en/start-known.ts';
import { monthStarts } from '../../language/format/month-starts.ts';
import { hasWeather, sumOf, weatherByWeek } from './known-weather.ts';
import { isAssumed, type StartContext } from './start-context.ts';

const WIDTH = 360;
const LEFT = 112;
const WEATHER = 60;
const ROW = 17;
const WATER = 20;
const TICKS = 13;
const MOST_ROWS = 12;
const MOST_ZONES = 4;
/** A source that serves for less has no room for its flow. */
const ROOM_FOR_FLOW = 60;

interface Part {
  readonly height: number;
  readonly content: SVGTemplateResult;
}

export function knownStrip(context: StartContext): TemplateResult {
  const { season, reader } = context;
  const say = startKnownWords(reader.language);
  let top = 14;
  const parts = [weatherPart(context), waterPart(context), timerPart(context), plantingsPart(context)].map((part) => {
    const placed = svg`<svg class="part" y=${top}>${part.content}</svg>`;
    top += part.height + 8;
    return placed;
  });
  const months = monthStarts(season.garden.span, reader.locale);
  const hasPlantings = season.zones.some(({ plantings }) => plantings.length > 0);
  return html`<svg class="strip" viewBox=${`0 0 ${WIDTH} ${top}`} role="img" aria-label=${say.picture}>
      ${months.map(({ week, label }) => svg`<text class="month" x=${xOf(week, context)} y="9">${label}</text>`)}
      ${parts}
    </svg>
    ${hasPlantings ? html`<p class="key small"><span class="key-need"></span> ${say.needs} <span class="key-got"></span> ${say.gets} <span class="key-lack"></span> ${say.lacks}</p>` : nothing}`;
}

const stepOf = ({ season }: StartContext): number => (WIDTH - LEFT) / season.garden.span.weeks;

const xOf = (week: number, context: StartContext): number => LEFT + week * stepOf(context);

/** What a later step will tell. */
function unknown({ reader, format }: StartContext, step: number): SVGTemplateResult {
  const say = startKnownWords(reader.language);
  return svg`<rect class="unknown" x=${LEFT} y="1" width=${WIDTH - LEFT - 1} height="16" rx="2" /><text class="when" x=${(LEFT + WIDTH) / 2} y="13">${say.atStep(format, step)}</text>`;
}

/** Rain as bars, and what the sun takes as a line. */
function weatherPart(context: StartContext): Part {
  const { season, reader } = context;
  const say = startKnownWords(reader.language);
  const names = svg`<text class="eto-name" x="0" y="14">${say.eto}</text>`;
  if (!hasWeather(season)) return { height: ROW, content: svg`${names}${unknown(context, 1)}` };
  const weeks = weatherByWeek(season);
  const step = stepOf(context);
  const most = Math.max(...weeks.flatMap(({ rainMm, etoMm }) => [rainMm, etoMm]), 1);
  const y = (mm: number) => WEATHER - (mm / most) * (WEATHER - 4);
  const line = weeks
    .map(({ etoMm }, week) => `${week === 0 ? 'M' : 'H'}${xOf(week, context)}${week === 0 ? ' ' : 'V'}${y(etoMm)}`)
    .join('');
  return {
    height: WEATHER,
    content: svg`${names}<text class="rain-name" x="0" y=${WEATHER - 4}>${say.rain}</text>
      ${weeks.map(({ rainMm }, week) => svg`<rect class="rain" x=${xOf(week, context)} y=${y(rainMm)} width=${step * 0.8} height=${WEATHER - y(rainMm)} />`)}
      <path class="eto" d=${`${line}H${WIDTH}`} />`,
  };
}

/** A band from the day on which a source begins, as high as its flow. */
function waterPart(context: StartContext): Part {
  const { season, reader, format } = context;
  const say = startKnownWords(reader.language);
  const { span, supply } = season.garden;
  const name = svg`<text x="0" y="14">${say.water}</text>`;
  const known = supply.sources.filter(({ flowLpm }) => flowLpm !== undefined);
  if (known.length === 0) return { height: ROW, content: svg`${name}${unknown(context, 2)}` };
  const most = Math.max(...known.map(({ flowLpm = 0 }) => flowLpm));
  const isGuess = isAssumed(context, 'flow');
  const bands = known.map(({ from, flowLpm = 0 }, index) => {
    const [begins, ends] = [from, known[index + 1]?.from ?? span.firstDay + 7 * span.weeks].map((day) =>
      xOf(Math.min(span.weeks, Math.max(0, (day - span.firstDay) / 7)), context),
    );
    const [x, wide] = [begins ?? LEFT, Math.max(0, (ends ?? LEFT) - (begins ?? LEFT) - 1)];
    const high = (WATER * (1 + flowLpm / most)) / 2;
    const flow = wide < ROOM_FOR_FLOW ? '' : format.quantity(flowLpm, 'supplyFlow');
    return svg`<rect class=${isGuess && index === 0 ? 'source-guess' : 'source-band'} x=${x} y=${WATER - high} width=${wide} height=${high} /><text class="flow" x=${x + 4} y=${WATER - 3}>${flow}</text>`;
  });
  return { height: WATER, content: svg`${name}${bands}` };
}

/** A tick on each watering day, a row for each of the first zones. */
function timerPart(context: StartContext): Part {
  const { season } = context;
  const { weeks } = season.garden.span;
  const isGuess = isAssumed(context, 'days');
  const zones = season.garden.zones.slice(0, MOST_ZONES);
  const rows = zones.map((zone, row) => {
    const day = stepOf(context) / 7;
    const ticks = Array.from({ length: 7 * weeks }, (_, at) =>
      (weekMask(zone, Math.floor(at / 7)) >> (at % 7)) & 1
        ? `M${(LEFT + (at + 0.5) * day).toFixed(1)} ${TICKS * row + 2}v7`
        : '',
    );
    return svg`<text x="0" y=${TICKS * row + 9}>${short(zone.name)}</text><path class=${isGuess ? 'days-run is-guess' : 'days-run'} stroke-width=${day * 0.7} d=${ticks.join('')} />`;
  });
  return { height: TICKS * zones.length, content: svg`${rows}` };
}

/** What each planting needs, and what it gets. */
function plantingsPart(context: StartContext): Part {
  const { season } = context;
  const plantings = season.zones.flatMap((zone) => zone.plantings).slice(0, MOST_ROWS);
  if (plantings.length === 0) return { height: ROW, content: unknown(context, 4) };
  const { weeks } = season.garden.span;
  const wide = stepOf(context) * 0.8;
  const rows = plantings.map((planting, row) => {
    const figures = (what: 'demandMm' | 'irrigationGrossMm') =>
      Array.from({ length: weeks }, (_, week) => plantingFigure(planting, what, week));
    const [needs, gets] = [figures('demandMm'), figures('irrigationGrossMm')];
    const scale = (ROW - 5) / Math.max(...needs, ...gets, 1);
    const foot = ROW * (row + 1) - 4;
    const need = sumOf(gets) === 0 && sumOf(needs) > 0 ? 'lack' : 'need';
    const bar = (kind: string, mm: number, week: number) =>
      svg`<rect class=${kind} x=${xOf(week, context)} y=${foot - mm * scale} width=${wide} height=${mm * scale} />`;
    return svg`<text x="0" y=${foot - 2}>${short(planting.planting.name)}</text>${needs.map((mm, week) => svg`${bar(need, mm, week)}${bar('got', gets[week] ?? 0, week)}`)}`;
  });
  return { height: ROW * plantings.length, content: svg`${rows}` };
}

const LONGEST_NAME = 17;
const short = (name: string): string => (name.length > LONGEST_NAME ? `${name.slice(0, LONGEST_NAME - 1)}…` : name);
