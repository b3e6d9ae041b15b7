import { css, html, nothing, type TemplateResult } from 'lit';
import { property, state } from 'lit/decorators.js';
import { findCrop } from '../../engine/plants/find-crop.ts';
import type { FoundPlant } from '../../exchange/plants/find-plants.ts';
import { loadPlants, type PlantFinder } from '../../exchange/plants/load-plants.ts';
import type { ListedPlant } from '../../exchange/plants/plant-list.ts';
import { plantsWords } from '../../language/en/plants.ts';
import { nameIn } from '../../language/name-in.ts';
import { controls } from '../../look/controls.styles.ts';
import { tokens } from '../../look/tokens.styles.ts';
import { fetchPart } from './fetch-part.ts';
import { PlanConsumer } from './plan-consumer.ts';
import { readingOf } from './plan-state.ts';
import { ViewElement } from './view-element.ts';

const MOST_SHOWN = 6;

/** Where a key leads among the plants that were found. */
const STEPS: Readonly<Record<string, number>> = { ArrowDown: 1, ArrowUp: -1 };

/**
 * A field that finds a plant or a crop by its name; the list comes once somebody types. Internal to the elements that let a plant be
 * chosen.
 */
export class PlantSearch extends ViewElement {
  static override readonly styles = [
    tokens,
    controls,
    css`
      :host {
        display: block;
        position: relative;
        background: none;
      }

      label {
        display: grid;
        gap: 0.25rem;
      }

      label span {
        font-weight: 600;
      }

      input {
        box-sizing: border-box;
        inline-size: 100%;
        min-block-size: 2.2rem;
        padding: 0.1rem 0.6rem;
        border: 1px solid var(--_quiet);
        border-radius: 0.4rem;
        background: none;
        color: var(--_ink);
        font: inherit;
      }

      ul {
        position: absolute;
        z-index: 220;
        inset-inline: 0;
        border: 1px solid var(--_quiet);
        border-radius: 0.4rem;
        background: var(--_paper);
        overflow: hidden;
      }

      li {
        display: flex;
        flex-wrap: wrap;
        gap: 0 0.75rem;
        justify-content: space-between;
        padding: 0.4rem 0.6rem;
        cursor: pointer;
      }

      li small {
        color: var(--_quiet);
        font-size: var(--_size-small);
      }

      li[aria-selected='true'] {
        background: var(--_ink);
        color: var(--_paper);
      }

      li[aria-selected='true'] small {
        color: inherit;
      }

      p {
        margin-block-start: 0.25rem;
        color: var(--_quiet);
        font-size: var(--_size-small);
      }

      @media (pointer: coarse) {
        input,
        li {
          min-block-size: 2.75rem;
          font-size: max(1rem, 16px);
        }

        li {
          align-items: center;
        }
      }
    `,
  ];

  readonly #plan = new PlanConsumer(this);

  /** What stands in the field. */
  @property({ attribute: false }) value = '';

  /** Whether its words of help stand beneath it. */
  @property({ attribute: false }) hasHelp = true;

  /** Called with what was chosen, and the name that stands in the field for it. */
  @property({ attribute: false }) chosen: (plant: ListedPlant, name: string) => void = () => undefined;

  /** Called with a name that was typed and stands for no plant of the list. */
  @property({ attribute: false }) typed: (name: string) => void = () => undefined;

  /** Called with what stands in the field while it is typed. */
  @property({ attribute: false }) typing: (text: string) => void = () => undefined;

  @state() private found: readonly FoundPlant[] | 'not-fetched' | undefined;

  @state() private at = -1;

  #finder: Promise<PlantFinder | undefined> | undefined;

  protected override render(): TemplateResult {
    const { language } = readingOf(this.#plan.view);
    const say = plantsWords(language);
    const found = typeof this.found === 'string' ? [] : (this.found ?? []);
    const isOpen = found.length > 0;
    return html`<label><span>${say.search.label}</span>
        <input type="text" role="combobox" autocomplete="off" spellcheck="false" name="plant" aria-autocomplete="list"
          aria-expanded=${isOpen ? 'true' : 'false'} aria-controls="options" aria-describedby="help"
          aria-activedescendant=${isOpen && this.at >= 0 ? `option-${this.at}` : nothing}
          .value=${this.value} @input=${this.#onInput} @keydown=${this.#onKey} @blur=${this.#onBlur} @change=${this.#onChange} /></label>
      <ul id="options" role="listbox" aria-label=${say.options} ?hidden=${!isOpen}>${this.#options(found)}</ul>
      <p id="help" ?hidden=${!this.hasHelp}>${say.search.help}</p>
      <div role="status">${this.#says()}</div>`;
  }

  #says(): TemplateResult | typeof nothing {
    const say = plantsWords(readingOf(this.#plan.view).language);
    if (this.found === 'not-fetched') return html`<p>${say.notFetched}</p>`;
    return this.found?.length === 0 ? html`<p>${say.none}</p>` : nothing;
  }

  #options(found: readonly FoundPlant[]): readonly TemplateResult[] {
    const say = plantsWords(readingOf(this.#plan.view).language);
    return found.map(({ plant, as }, index) => {
      const name = this.#nameOf(plant);
      return html`<li id="option-${index}" role="option" aria-selected=${index === this.at ? 'true' : 'false'}
        @pointerdown=${(event: Event) => event.preventDefault()} @click=${() => this.#choose(index)}>
        <span>${say.option(name, as === name ? undefined : as)}</span>
        <small>${plant.type === 'crop' ? say.crop : `${say.kinds[plant.kind]}, ${say.needs(say.classes[plant.class])}`}</small>
      </li>`;
    });
  }

  #nameOf(plant: ListedPlant): string {
    if (plant.type === 'plant') return plant.names[0] ?? plant.botanical;
    return nameIn(findCrop(plant.crop).name, readingOf(this.#plan.view).language);
  }

  readonly #onInput = async (event: Event): Promise<void> => {
    this.value = (event.target as HTMLInputElement).value;
    this.typing(this.value);
    const typed = this.value;
    this.#finder ??= fetchPart(loadPlants);
    const finder = await this.#finder;
    if (finder === undefined) this.#finder = undefined;
    // Something else was typed since.
    if (typed !== this.value) return;
    this.at = -1;
    if (finder === undefined) this.found = 'not-fetched';
    else this.found = typed.trim() === '' ? undefined : finder.find(typed, MOST_SHOWN);
  };

  readonly #onKey = (event: KeyboardEvent): void => {
    const { found } = this;
    if (!Array.isArray(found) || found.length === 0) return;
    const step = STEPS[event.key];
    if (step !== undefined)
      this.at = (this.at + step + found.length + (this.at < 0 && step < 0 ? 1 : 0)) % found.length;
    else if (event.key === 'Enter') this.#choose(Math.max(0, this.at));
    else if (event.key === 'Escape') this.found = undefined;
    else return;
    event.preventDefault();
    event.stopPropagation();
  };

  readonly #onBlur = (): void => {
    this.found = undefined;
  };

  /** A name that was typed in full is that of its plant, chosen or not. */
  readonly #onChange = (): void => {
    const index = Array.isArray(this.found) ? this.found.findIndex(({ isWhole }: FoundPlant) => isWhole) : -1;
    if (index >= 0) this.#choose(index);
    else if (this.value.trim() !== '') this.typed(this.value.trim());
  };

  #choose(index: number): void {
    const found = Array.isArray(this.found) ? this.found[index] : undefined;
    if (found === undefined) return;
    const name = this.#nameOf(found.plant);
    this.value = name;
    this.found = undefined;
    this.chosen(found.plant, name);
  }
}
