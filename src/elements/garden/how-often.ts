/** How often a zone should be watered, beside the days that its plan has; where those are too few, the days that fit are one press away. */
import { html, nothing, type TemplateResult } from 'lit';
import type { DaysAWeek } from '../../engine/application/days-a-week.ts';
import { countDays } from '../../engine/season/days-mask.ts';
import { howOftenWords } from '../../language/en/how-often.ts';
import { isolated } from '../../language/format/isolated.ts';
import type { PlanZone } from '../../plan/schema/plan-schema.ts';
import { daysThatFit, type ProposedDays, proposedDays } from '../../remedies/how-often/how-often.ts';
import { refusal } from './fields.ts';
import type { FormContext } from './form-context.ts';

/** Folded; what the proposed days change is worked out where somebody looks. */
export function howOften(zone: PlanZone, context: FormContext): TemplateResult | typeof nothing {
  const { plan, season, reader, format, isOpen, toggle } = context;
  const say = howOftenWords(reader.language);
  const fits = daysThatFit(season, zone.id);
  if (fits.length === 0) return nothing;
  const few = fits.filter(({ isEnough }) => !isEnough).map(({ month }) => month);
  const key = `often-${zone.id}`;
  const proposed = isOpen(key) ? proposedDays(plan, season, zone.id) : undefined;
  return html`<details class="wide" ?open=${isOpen(key)} @toggle=${(event: ToggleEvent) => toggle(key, event.newState === 'open')}>
    <summary>${few.length === 0 ? say.enough : say.more(format, few)}</summary>
    ${
      isOpen(key)
        ? html`<div class="part-body">
      <p class="help">${say.help}</p>
      <ul class="often">${fits.map((fit) => html`<li>${monthText(fit, zone, context)}</li>`)}</ul>
      ${proposed === undefined ? nothing : proposalPart(proposed, zone, context)}
    </div>`
        : nothing
    }
  </details>`;
}

function monthText(fit: DaysAWeek, zone: PlanZone, { reader, format }: FormContext): TemplateResult {
  const say = howOftenWords(reader.language);
  const planting = isolated(zone.plantings.find(({ id }) => id === fit.plantingId)?.name ?? fit.plantingId);
  const { month, daysAWeek: days, startsADay: runs, waterAtHandMm, dailyUseMm } = fit;
  const planned = fit.isEnough ? undefined : countDays(fit.plannedMask);
  const isBounded = days === fit.allowedDays && days < DAYS_A_WEEK;
  return html`<b>${say.month(format, month, days, runs)}</b>${planned === undefined ? '' : say.planned(format, planned)}
    <span class="quiet">${say.why(format, planting, waterAtHandMm, dailyUseMm)}${isBounded ? say.bounded(format, days) : ''}</span>`;
}

const DAYS_A_WEEK = 7;

function proposalPart(proposed: ProposedDays, zone: PlanZone, context: FormContext): TemplateResult {
  const { form, format, reader } = context;
  const say = howOftenWords(reader.language);
  const { shortDaysBefore, shortDaysAfter, litresMore, minutesMore } = proposed;
  const key = `zone-${zone.id}-howOften`;
  return html`<p>${say.effect(format, { shortDaysBefore, shortDaysAfter, litresMore, minutesMore })}</p>
    ${form.readOnly ? nothing : html`<button name=${key} @click=${() => form.send(key, '', proposed.edit)}>${say.apply}</button>${refusal(key, context)}`}`;
}
