import { html, type LitElement, nothing, type TemplateResult } from 'lit';
import { guard } from 'lit/directives/guard.js';
import type { ZoneRule } from '../../engine/garden.ts';
import type { Catalogue } from '../../engine/line/catalogue.ts';
import type { ZoneComparison } from '../../engine/mix/compare-zone.ts';
import { shutOffCalendar } from '../../engine/mix/shut-off-calendar.ts';
import type { ZoneSeason } from '../../engine/season/season.ts';
import { describeEdit } from '../../language/describe-edit.ts';
import { mixWords } from '../../language/en/mix.ts';
import type { Edit } from '../../plan/edits/edit.ts';
import { adoptStyles } from '../shared/adopt-styles.ts';
import { faultsTemplate } from '../shared/faults-template.ts';
import type { PlanConsumer } from '../shared/plan-consumer.ts';
import { isReady, type ReadyView, readingOf, waitingTemplate } from '../shared/plan-state.ts';
import { mixHeader } from './mix-header.ts';
import { mixPictureStyles } from './mix-picture.styles.ts';
import { mixPicture } from './mix-picture.ts';
import { calendarTemplate, remediesSection } from './mix-remedies.ts';
import { plantingTable, ruleDetails, weekTable } from './mix-tables.ts';
import { trialBanner, trialForm } from './mix-trial.ts';
import { RemedySearch } from './remedy-search.ts';
import { mixStyles } from './runnel-mix.styles.ts';
import { Stages } from './stages.ts';
import { type Trial, tryMove } from './trial.ts';
import { ZoneComparer } from './zone-comparer.ts';

/** In which its parts are first drawn. */
const STAGES = { comparison: 1, header: 2, picture: 3, figures: 4, remedies: 5, rest: 6 } as const;

/** What is shown: the plan as it is, or with what is being tried. */
interface Shown {
  readonly view: ReadyView;
  readonly zone: ZoneSeason;
  readonly comparison: ZoneComparison;
  readonly trial: Trial | undefined;
}

/** The element whose content this is. */
export interface MixHost extends LitElement {
  readonly catalogue: Catalogue;
}

/** What the comparison shows, and what is tried in it before anything is kept. */
export class MixBody {
  /** Shown instead of the zone's own rule; goes with the zone. */
  #asIf: { readonly zoneId: string; readonly rule: ZoneRule } | undefined;
  #trial: Trial | undefined;
  /** The edit that was made here last, as long as undo would take it back. */
  #applied: Edit | undefined;
  #showsWeeks = false;

  readonly #host: MixHost;
  readonly #plan: PlanConsumer;
  readonly #search: RemedySearch;
  readonly #stages: Stages;
  readonly #comparer: ZoneComparer;

  constructor(host: MixHost, plan: PlanConsumer) {
    this.#host = host;
    this.#plan = plan;
    adoptStyles(host.renderRoot, mixPictureStyles);
    adoptStyles(host.renderRoot, mixStyles);
    this.#search = new RemedySearch(host);
    this.#stages = new Stages(host);
    this.#comparer = new ZoneComparer(host);
  }

  /** Waits for the next stage of the first drawing; false where there was one. */
  async isDrawn(): Promise<boolean> {
    return (await this.#comparer.isSettled()) && (await this.#stages.isDrawn());
  }

  /** Before each drawing: lets go of what is over, and looks for remedies. */
  follow(): void {
    const { view } = this.#plan;
    if (this.#trial !== undefined && this.#trial.from !== view.plan) this.#trial = undefined;
    if (this.#applied !== view.undoStep?.edit) this.#applied = undefined;
    if (!isReady(view)) {
      this.#search.stop();
      return;
    }
    if (this.#trial !== undefined) this.#search.stop();
    else if (this.#stages.has(STAGES.figures)) this.#look(view);
    const last = this.#search.found === undefined ? STAGES.figures : STAGES.rest;
    this.#stages.until = this.#comparer.hasCompared ? last : STAGES.comparison;
  }

  render(): TemplateResult | typeof nothing {
    const { view } = this.#plan;
    if (!isReady(view)) return waitingTemplate(view);
    const trial = this.#trial;
    const zoneId = zoneShown(view).zone.id;
    const season = trial?.season ?? view.season;
    const zone = season.zones.find((candidate) => candidate.zone.id === zoneId);
    if (zone === undefined || !this.#stages.has(STAGES.comparison)) return waitingTemplate(view);
    const comparison = this.#comparer.compare(season, zone, this.#ruleOf(zoneId));
    if (comparison === undefined) return waitingTemplate(view);
    if (!this.#stages.has(STAGES.header)) return nothing;
    const shown = { view, zone, comparison, trial };
    const reader = readingOf(view);
    return html`<div role="alert">${faultsTemplate('edit', this.#plan.refused, reader)}</div>
    ${this.#header(shown)}
    ${zone.plantings.length === 0 ? html`<p class="waiting">${mixWords(reader.language).emptyZone}</p>` : this.#content(shown)}
    ${this.#stages.has(STAGES.figures) ? this.#trialPart(shown) : nothing}`;
  }

  #look({ plan, season, ...view }: ReadyView): void {
    const zone = zoneShown({ ...view, plan, season });
    const { catalogue } = this.#host;
    this.#search.for({ plan, season, zoneId: zone.zone.id, catalogue, comparison: this.#comparer.asPlanned(zone) });
  }

  #ruleOf(zoneId: string): ZoneRule | undefined {
    return this.#asIf?.zoneId === zoneId ? this.#asIf.rule : undefined;
  }

  #header({ view, zone, comparison }: Shown): TemplateResult {
    const zoneId = zone.zone.id;
    return mixHeader({
      zones: view.season.zones.map((each) => each.zone),
      zone,
      comparison,
      rule: this.#ruleOf(zoneId),
      reader: readingOf(view),
      chooseZone: (id) => this.#plan.select({ ...view.selection, zone: id, planting: undefined }),
      chooseRule: (rule) => {
        this.#asIf = rule === undefined ? undefined : { zoneId, rule };
        this.#host.requestUpdate();
      },
    });
  }

  #content(shown: Shown): TemplateResult | typeof nothing {
    if (!this.#stages.has(STAGES.picture)) return nothing;
    const { view, zone, comparison, trial } = shown;
    const reader = readingOf(view);
    const { span } = view.season.garden;
    const valves = zone.zone.plantings.filter(({ hasShutOff }) => hasShutOff);
    const picture = guard([comparison, zone, reader.language, reader.units], () =>
      mixPicture({ comparison, plantings: zone.zone.plantings, span, reader }),
    );
    if (!this.#stages.has(STAGES.figures)) return html`${picture}`;
    return html`${picture}
      ${valves.map(({ id, name }) => calendarTemplate({ stretches: shutOffCalendar(zone, id) }, name, span, reader))}
      ${
        trial === undefined
          ? this.#remedies(view)
          : html`<p class="quiet">${mixWords(reader.language).trial.remediesLater}</p>`
      }
      ${this.#figures(shown)}`;
  }

  #figures({ view, zone, comparison, trial }: Shown): TemplateResult {
    const reader = readingOf(view);
    const words = mixWords(reader.language).table;
    const { found } = this.#search;
    const hasRules = found !== undefined && found.rules.length > 0 && this.#stages.has(STAGES.rest);
    const toggled = (event: Event) => {
      this.#showsWeeks = (event.target as HTMLDetailsElement).open;
      this.#host.requestUpdate();
    };
    return html`<section>
      <h3>${words.title}</h3>
      ${plantingTable(comparison, reader)}
      <details class="weekly" @toggle=${toggled}>
        <summary>${words.weekly}</summary>
        ${this.#showsWeeks ? weekTable(comparison, view.season.garden.span.firstDay, reader) : nothing}
      </details>
      ${trial === undefined && hasRules ? ruleDetails(found, zone, reader) : nothing}
    </section>`;
  }

  #remedies(view: ReadyView): TemplateResult {
    const { undoStep } = view;
    const reader = readingOf(view);
    const applied = this.#applied;
    const drawn = this.#stages.has(STAGES.rest) ? 'all' : this.#stages.has(STAGES.remedies) ? 'best' : 'nothing';
    return remediesSection({
      found: this.#search.found,
      tried: this.#search.tried,
      drawn,
      nameOf: nameIn(view),
      span: view.season.garden.span,
      reader,
      apply: view.readOnly ? undefined : ({ edit }) => this.#apply(edit),
      applied:
        applied === undefined || undoStep === undefined ? undefined : describeEdit(undoStep.before, applied, reader),
      undo: () => this.#plan.step('undo'),
    });
  }

  #trialPart({ view, zone, trial }: Shown): TemplateResult {
    const { season, plan, readOnly } = view;
    const reader = readingOf(view);
    const set = (next: Trial | undefined) => {
      this.#trial = next;
      this.#host.requestUpdate();
    };
    if (trial === undefined) {
      return trialForm({ season, zoneId: zone.zone.id, reader, tryMove: (move) => set(tryMove(plan, season, move)) });
    }
    const keep = () => {
      if (this.#apply(trial.edit)) set(undefined);
    };
    return trialBanner({ trial, season, reader, keep: readOnly ? undefined : keep, drop: () => set(undefined) });
  }

  /** Whether the edit was accepted. */
  #apply(edit: Edit): boolean {
    const { ok } = this.#plan.edit(edit);
    if (ok) this.#applied = edit;
    this.#host.requestUpdate();
    return ok;
  }
}

/** The selected zone, else the first with more than one planting, else the first. */
function zoneShown({ season: { zones }, selection }: ReadyView): ZoneSeason {
  const shown =
    zones.find(({ zone }) => zone.id === selection.zone) ?? zones.find(({ plantings }) => plantings.length > 1);
  return shown ?? (zones[0] as ZoneSeason);
}

function nameIn({ season }: ReadyView): (plantingId: string) => string {
  const plantings = season.zones.flatMap((zone) => zone.zone.plantings);
  return (plantingId) => plantings.find(({ id }) => id === plantingId)?.name ?? plantingId;
}
