/** Plantings that are new in next year’s plan: a name and a zone each. */
import { html, type LitElement, type TemplateResult } from 'lit';
import type { UnitSystem } from '../../engine/units.ts';
import { nextYearWords } from '../../language/en/next-year.ts';
import { isolated } from '../../language/format/isolated.ts';
import type { NewPlanting } from '../../plan/next-year/next-year.ts';
import { type ReadyView, readingOf } from '../shared/plan-state.ts';

interface Added {
  readonly name: string;
  readonly zone: string;
}

/** Until somebody measures it: about 10 sq ft, or 1 m². */
const NEW_AREA = { us: 10, metric: 1 } as const satisfies Readonly<Record<UnitSystem, number>>;

export class NewPlantings {
  readonly #host: LitElement;
  readonly #changed: () => void;
  #added: readonly Added[] = [];

  constructor(host: LitElement, changed: () => void) {
    this.#host = host;
    this.#changed = changed;
  }

  /** Each with no more than its name known: the rest is assumed. */
  plantings(units: UnitSystem): readonly NewPlanting[] {
    return this.#added.map(({ name, zone }) => ({
      zone,
      planting: {
        name,
        need: { kind: 'class', class: 'moderate' },
        extent: { kind: 'area', area: NEW_AREA[units] },
        lines: [],
        assumed: ['need', 'extent', 'lines'],
      },
    }));
  }

  render(view: ReadyView): TemplateResult {
    const say = nextYearWords(readingOf(view).language);
    const { zones } = view.plan;
    const zoneName = (id: string) => isolated(zones.find((zone) => zone.id === id)?.name ?? id);
    return html`<ul>${this.#added.map(
      (each) => html`<li>${say.added(isolated(each.name), zoneName(each.zone))}
        <button class="plain" @click=${() => this.#remove(each)} aria-label=${say.remove(isolated(each.name))}>×</button></li>`,
    )}</ul>
    <div class="actions">
      <label>${say.newName} <input name="new-planting" maxlength="120" data-runnel-waits /></label>
      <label>${say.newZone}
        <select name="new-zone">${zones.map(({ id }) => html`<option value=${id}>${zoneName(id)}</option>`)}</select></label>
      <button @click=${() => this.#add()}>${say.addOne}</button>
    </div>`;
  }

  #add(): void {
    const { renderRoot } = this.#host;
    const field = renderRoot.querySelector<HTMLInputElement>('[name=new-planting]');
    const zone = renderRoot.querySelector<HTMLSelectElement>('[name=new-zone]')?.value;
    const name = field?.value.trim() ?? '';
    if (field === null || name === '' || zone === undefined) return;
    this.#added = [...this.#added, { name, zone }];
    field.value = '';
    this.#changed();
  }

  #remove(each: Added): void {
    this.#added = this.#added.filter((other) => other !== each);
    this.#changed();
  }
}
