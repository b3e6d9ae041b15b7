/** The three sentences that answer why, before any step. */
import { html, nothing, type TemplateResult } from 'lit';
import { countDays } from '../../engine/season/days-mask.ts';
import { openRunMask, plantingFigure } from '../../engine/season/planting-week.ts';
import type { PlantingSeason, Season, ZoneSeason } from '../../engine/season/season.ts';
import { type WeekAnswer, weekAnswer } from '../../explain/trace/week-answer.ts';
import { restOfWeek } from '../../explain/trace/week-rest.ts';
import { howDeepWords } from '../../language/en/how-deep.ts';
import { traceWords } from '../../language/en/trace.ts';
import { traceGroundWords } from '../../language/en/trace-ground.ts';
import { formatFor } from '../../language/format/format.ts';
import { isolated } from '../../language/format/isolated.ts';
import type { Reader } from '../../language/reader.ts';
import { plantingWeek } from '../../sheet/totals.ts';
import { weeklyWeather } from '../../sheet/week-weather.ts';
import { runDepthsTemplate } from '../shared/run-depths-template.ts';

export interface Asked {
  readonly season: Season;
  readonly week: number;
  readonly zone: ZoneSeason;
  readonly planting: PlantingSeason | undefined;
  readonly reader: Reader;
  /** Shows one planting of the zone. */
  readonly choose: (plantingId: string) => void;
}

export function answerTemplate(asked: Asked): TemplateResult | typeof nothing {
  const { zone, week, planting } = asked;
  const answer = weekAnswer(zone, week);
  if (answer === undefined) return nothing;
  return html`<div class="answer">
    ${planting === undefined ? zoneSentences(asked, answer) : plantingSentences(asked, planting)}
  </div>
  ${depths(asked, answer)}`;
}

/** Of the planting that is shown, else of the one that sets the run. */
function depths({ season, zone, week, planting, reader }: Asked, { run }: WeekAnswer): TemplateResult | typeof nothing {
  const shown = planting ?? zone.plantings.find((each) => each.planting.id === run.decider?.id);
  if (shown === undefined) return nothing;
  const told = runDepthsTemplate({ season, zone, week, planting: shown, reader });
  return told === nothing
    ? nothing
    : html`<details><summary>${howDeepWords(reader.language).title}</summary>${told}</details>`;
}

function zoneSentences(asked: Asked, answer: WeekAnswer): TemplateResult {
  const { reader } = asked;
  const { answer: say } = traceWords(reader.language);
  const format = formatFor(reader);
  const { needMm, most } = answer;
  return html`<p class="need">${most === undefined ? say.need(format, needMm) : say.needMost(format, needMm, isolated(most.name), most.needMm)}</p>
    <p class="rain">${rainSentence(asked, answer.rainCountedMm)}</p>
    <p class="run">${runSentence(asked, answer)}</p>`;
}

function rainSentence({ season, week, reader }: Asked, countedMm: number): string {
  const { answer: say } = traceWords(reader.language);
  const format = formatFor(reader);
  const { mm = 0, observedDays = 0 } = weeklyWeather('rain', season.weather).weeks[week] ?? {};
  if (observedDays > 0) return mm > 0 ? say.rainFell(format, countedMm, mm) : say.noRainFell;
  return mm > 0 ? say.rainUsual(format, countedMm, mm) : say.noRainUsual;
}

function runSentence(asked: Asked, { run }: WeekAnswer): TemplateResult {
  const { reader, choose } = asked;
  const { answer: say } = traceWords(reader.language);
  const runs = run.runs.length === 0 ? '' : say.runs(formatFor(reader), run.runs);
  const { decider, cause } = run;
  const resting = cause === 'none' ? restSentence(asked) : undefined;
  if (resting !== undefined) return html`${resting}`;
  if (cause !== 'planting') return html`${say.cause[cause](runs)}`;
  if (decider === undefined) return html`${runs}.`;
  return html`${say.decides} <button class="plain" @click=${() => choose(decider.id)}>${isolated(decider.name)}</button>: ${runs}.`;
}

/** Where all that is in the ground is at rest in the week. */
function restSentence({ season, zone, week, planting, reader }: Asked): string | undefined {
  const members = planting === undefined ? zone.plantings : [planting];
  const present = members.filter((member) => plantingFigure(member, 'groundDays', week) > 0);
  const kinds = present.map((member) => restOfWeek(season, member, week));
  const [kind] = kinds;
  return kind === undefined || kinds.includes(undefined) ? undefined : traceGroundWords(reader.language).rest[kind];
}

function plantingSentences(asked: Asked, member: PlantingSeason): TemplateResult {
  const { zone, week, reader } = asked;
  const { answer: say } = traceWords(reader.language);
  const format = formatFor(reader);
  const { litres, metShare, rainMm } = plantingWeek(zone, member, week);
  const days = countDays(openRunMask(zone, member, week));
  return html`<p class="need">${say.planting(format, isolated(member.planting.name), plantingFigure(member, 'demandMm', week))}</p>
    <p class="rain">${rainSentence(asked, rainMm)}</p>
    <p class="run">${(litres === 0 ? restSentence(asked) : undefined) ?? say.received(format, days, litres, metShare === undefined ? '' : format.percent(Math.min(metShare, 9.99)))}</p>`;
}
