/** A dry, a middle and a wet year beside the plan: what they mean, and a choice of the year that the sheet shows. */
import { html, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import type { Season } from '../../engine/season/season.ts';
import type { YearOutcome } from '../../engine/years/year-seasons.ts';
import { chartYearsWords } from '../../language/en/chart-years.ts';
import { formatFor } from '../../language/format/format.ts';
import type { Reader } from '../../language/reader.ts';
import { yearsHoldWords, yearsInBand } from '../../language/years-hold-words.ts';
import type { SeasonYears, YearsState } from '../shared/season-years.ts';

type Done = Extract<YearsState, { step: 'done' }>;

/** Behind the chart's finding, which ends without a full stop: what the years say. */
export function yearsFinding(state: YearsState, season: Season, reader: Reader): string {
  return state.step === 'done' ? `. ${yearsHoldWords(state.band, season, reader).replace(/\.$/, '')}` : '';
}

/** `asks`: begins to run the years, where they are not run by themselves. */
export function yearsTemplate(
  years: SeasonYears,
  shown: number | undefined,
  choose: (year: number | undefined) => void,
  reader: Reader,
): TemplateResult {
  const say = chartYearsWords(reader.language);
  const { state } = years;
  if (state.step === 'none') {
    return html`<p class="years"><button class="plain" name="years" @click=${() => years.compare()}>${say.compare}</button></p>`;
  }
  if (state.step === 'busy')
    return html`<p class="years quiet small">${say.busy} <progress .value=${state.share}></progress></p>`;
  return html`<p class="years small"><span class="swatch band"></span> ${bandSentence(state, reader)}
    <label>${say.show} <select name="year" .value=${live(shown === undefined ? '' : String(shown))}
      @change=${(event: Event) => choose(chosenIn(event))}>
      <option value="" ?selected=${shown === undefined}>${say.own}</option>
      ${options(state, reader).map(
        ([year, label]) => html`<option value=${String(year)} ?selected=${year === shown}>${label}</option>`,
      )}
    </select></label></p>`;
}

function chosenIn({ target }: Event): number | undefined {
  const { value } = target as HTMLSelectElement;
  return value === '' ? undefined : Number(value);
}

function bandSentence({ band, outcomes }: Done, reader: Reader): string {
  const say = chartYearsWords(reader.language);
  const ends = [band.leastLitres.at(-1) ?? 0, band.mostLitres.at(-1) ?? 0] as const;
  const sentence = say.band(formatFor(reader), ...yearsInBand(band.years), ...ends);
  return outcomes.basis === 'made' ? `${sentence} ${say.made}` : sentence;
}

/** The three of the band, then every year that has a name. */
function options({ band, outcomes }: Done, reader: Reader): readonly (readonly [number, string])[] {
  const say = chartYearsWords(reader.language);
  const named = (outcome: YearOutcome, kind: string) =>
    [outcome.year, outcome.calendarYear === undefined ? kind : say.kindOf(kind, outcome.calendarYear)] as const;
  const three = (['dry', 'middle', 'wet'] as const).map((kind) => named(band[kind], say.kinds[kind]));
  const taken = new Set(three.map(([year]) => year));
  const others = outcomes.outcomes.flatMap(({ year, calendarYear }) =>
    calendarYear === undefined || taken.has(year) ? [] : [[year, String(calendarYear)] as const],
  );
  return [...three, ...others];
}
