/** The table that is on its way in, as far as it has come. */
import { html, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import { type UnitSystem, unitOf } from '../../engine/units.ts';
import type { TablePreview } from '../../exchange/csv/table-from-csv.ts';
import { formatCount } from '../../language/format/count.ts';
import { faultsTemplate } from '../notices/faults-template.ts';
import { type ReadyView, readingOf } from '../shared/plan-state.ts';
import { filesWords } from '../shared/words/files-words.ts';
import { changesTemplate, rowFaultsTemplate } from './preview-template.ts';
import type { Intake } from './table-intake.ts';

export interface IntakeActions {
  readonly readIn: (units: UnitSystem) => void;
  readonly takeIn: () => void;
  readonly cancel: () => void;
  readonly undo: () => void;
}

/** What is announced: where it stands, in a sentence or two. */
export function intakeStatus(intake: Intake, { plan, locale }: ReadyView): string {
  if (intake.step === 'reading') return filesWords.reading;
  if (intake.step === 'preview') return previewWords(intake.name, intake.preview, locale);
  if (intake.step !== 'taken') return '';
  const changes = formatCount(intake.count, filesWords.changes, locale);
  if (plan === intake.after) return filesWords.takenIn(changes, intake.name);
  return plan === intake.before ? filesWords.takenBack(changes) : '';
}

function previewWords(name: string, { kind, rows, changes, outside }: TablePreview, locale: string): string {
  const count = (number: number, words: { readonly one: string; readonly other: string }) =>
    formatCount(number, words, locale);
  const counts = [count(rows, filesWords.rows), count(changes.length, filesWords.changes)] as const;
  const parts = [
    filesWords.summary(filesWords.kind[kind], name, ...counts),
    outside === 0 ? '' : filesWords.outside(count(outside, filesWords.days)),
    changes.length === 0 ? filesWords.nothing : filesWords.notYet,
  ];
  return parts.filter((part) => part !== '').join(' ');
}

/** Why a file was not taken; in a live region of its own. */
export function refusedTemplate(intake: Intake): TemplateResult | typeof nothing {
  if (intake.step !== 'refused') return nothing;
  return html`<p class="refused">
    ${intake.name === undefined ? nothing : html`<strong>${intake.name}</strong>`} ${intake.says}
    ${intake.name === undefined ? nothing : filesWords.refused}
  </p>`;
}

export function previewTemplate(
  intake: Intake,
  view: ReadyView,
  actions: IntakeActions,
): TemplateResult | typeof nothing {
  if (intake.step !== 'preview') return nothing;
  const { preview, faults } = intake;
  return html`<div class="preview">
    ${unitsTemplate(preview, view, actions)}
    ${rowFaultsTemplate(preview, view.locale)}
    ${changesTemplate(preview, view)}
    <div role="alert">${faultsTemplate(faults, true, readingOf(view))}</div>
    <div class="actions">
      ${
        preview.edit === undefined
          ? nothing
          : html`<button class="main" @click=${actions.takeIn}>
              ${preview.faults.length === 0 ? filesWords.takeIn : filesWords.takeRest}
            </button>`
      }
      <button @click=${actions.cancel}>${preview.edit === undefined ? filesWords.close : filesWords.cancel}</button>
    </div>
  </div>`;
}

/** In which units the weather is, and, where no heading says so, the choice. */
function unitsTemplate(
  { kind, units, unnamed }: TablePreview,
  { plan }: ReadyView,
  { readIn }: IntakeActions,
): TemplateResult | typeof nothing {
  if (units === undefined) return nothing;
  const other: UnitSystem = plan.units === 'us' ? 'metric' : 'us';
  const converted: WeatherQuantity[] = [
    ...(units.rain === other ? (['depth'] as const) : []),
    ...(units.min === other || units.max === other ? (['temperature'] as const) : []),
  ];
  const names = (system: UnitSystem) => converted.map((quantity) => unitName(quantity, system)).join(', ');
  const chosen = (event: Event) => readIn((event.target as HTMLSelectElement).value as UnitSystem);
  return html`${
    unnamed === undefined
      ? nothing
      : html`<label class="units">${filesWords.unitsAsked}
          <select @change=${chosen}>
            ${SYSTEMS.map((system) => html`<option value=${system} .selected=${live(system === unnamed)}>${unitNames(kind, system)}</option>`)}
          </select></label>`
  }
  ${converted.length === 0 ? nothing : html`<p>${filesWords.converted(names(other), names(plan.units))}</p>`}`;
}

type WeatherQuantity = 'depth' | 'temperature';

const SYSTEMS: readonly UnitSystem[] = ['us', 'metric'];

/** `inches`, or `inches, °F`: the units of the weather that a table has. */
function unitNames(kind: TablePreview['kind'], system: UnitSystem): string {
  const depth = unitName('depth', system);
  return kind === 'rain' ? depth : `${depth}, ${unitName('temperature', system)}`;
}

function unitName(quantity: WeatherQuantity, system: UnitSystem): string {
  return quantity === 'depth' ? filesWords.depthUnits[system] : unitOf(quantity, system).name;
}
