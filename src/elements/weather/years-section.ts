/** A dry, a middle and a wet year, and in how many years the supply holds. */

import { html, nothing, type TemplateResult } from 'lit';
import type { YearBand } from '../../engine/years/year-band.ts';
import { weatherWords } from '../../language/en/weather.ts';
import { isolatedText } from '../../language/format/isolated.ts';
import { yearsHoldWords } from '../../language/years-hold-words.ts';
import type { FormContext } from '../garden/form-context.ts';
import type { SeasonYears } from '../shared/season-years.ts';

export function yearsSection(
  { plan, season, form, reader, format }: FormContext,
  comparer: SeasonYears,
): TemplateResult {
  const say = weatherWords(reader.language).years;
  const { years, climate } = plan.site;
  const remove = () => form.send('years', '', { type: 'change-site', change: { years: undefined } });
  const source = years?.source === climate.source ? undefined : years?.source;
  const held =
    years === undefined
      ? html`<p class="quiet">${say.none}</p>`
      : html`<p class="quiet">${say.held(format, season.weather.years().years, source && isolatedText(source))}
          ${form.readOnly ? nothing : html`<button class="plain" @click=${remove}>${say.remove}</button>`}</p>`;
  const { state } = comparer;
  return html`<h3>${say.title}</h3>${held}
    ${state.step === 'none' ? html`<button name="compare-years" @click=${() => comparer.compare()}>${say.compare}</button>` : nothing}
    <div role="status">${
      state.step === 'busy' ? html`<p>${say.busy} <progress .value=${state.share}></progress></p>` : nothing
    }${state.step === 'done' ? html`<p>${yearsHoldWords(state.band, season, reader)}</p>` : nothing}</div>
    ${state.step === 'done' ? bandTable(state.band, { reader, format }) : nothing}`;
}

type Saying = Pick<FormContext, 'reader' | 'format'>;

function bandTable(band: YearBand, { reader, format }: Saying): TemplateResult {
  const say = weatherWords(reader.language).years;
  const rows = ['wet', 'middle', 'dry'] as const;
  return html`<table class="band">
    <thead>
      <tr>
        <th scope="col">${say.year}</th>
        <th scope="col">${say.rain}</th>
        <th scope="col">${say.eto}</th>
        <th scope="col">${say.water}</th>
      </tr>
    </thead>
    <tbody>
      ${rows.map((row) => {
        const { rainMm, etoMm, irrigationLitres } = band[row];
        return html`<tr>
          <th scope="row">${say.rows[row]}</th>
          <td>${format.quantity(rainMm, 'depth')}</td>
          <td>${format.quantity(etoMm, 'depth')}</td>
          <td>${format.quantity(irrigationLitres.at(-1) ?? 0, 'volume')}</td>
        </tr>`;
      })}
    </tbody>
  </table>
  <p class="help">${say.help(format, band.years)}</p>`;
}
