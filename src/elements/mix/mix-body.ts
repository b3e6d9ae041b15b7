import { html, nothing, type TemplateResult } from 'lit';
import { guard } from 'lit/directives/guard.js';
import type { ZoneRule } from '../../engine/garden.ts';
import type { Catalogue } from '../../engine/line/catalogue.ts';
import type { ZoneComparison } from '../../engine/mix/compare-zone.ts';
import { shutOffCalendar } from '../../engine/mix/shut-off-calendar.ts';
import type { ZoneSeason } from '../../engine/season/season.ts';
import { describeEdit } from '../../language/describe-edit.ts';
import { mixWords } from '../../language/en/mix.ts';
import { isolated } from '../../language/format/isolated.ts';
import type { Edit } from '../../plan/edits/edit.ts';
import { editsToKeep } from '../../remedies/mix/what-if.ts';
import { adoptStyles } from '../shared/adopt-styles.ts';
import { faultsTemplate } from '../shared/faults-template.ts';
import { onceAnswered, type PlanConsumer } from '../shared/plan-consumer.ts';
import { isReady, type ReadyView, readingOf, waitingTemplate } from '../shared/plan-state.ts';
import type { ViewElement } from '../shared/view-element.ts';
import { mixHeader } from './mix-header.ts';
import { mixPictureStyles } from './mix-picture.styles.ts';
import { mixPicture } from './mix-picture.ts';
import { calendarTemplate, remediesSection } from './mix-remedies.ts';
import { plantingTable, ruleDetails, weekTable } from './mix-tables.ts';
import { trialBanner, trialForm } from './mix-trial.ts';
import { whatIfsSection } from './mix-what-ifs.ts';
import { RemedySearch } from './remedy-search.ts';
import { mixStyles } from './runnel-mix.styles.ts';
import { Stages } from './stages.ts';
import { editOf, moveEdit, type Trial, tryEdits } from './trial.ts';
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
export interface MixHost extends ViewElement {
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
    if (this.#stages.has(STAGES.figures)) this.#look(view);
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
    ${trial === undefined ? nothing : this.#tried(view, trial)}
    ${zone.plantings.length === 0 ? html`<p class="waiting">${mixWords(reader.language).emptyZone}</p>` : this.#content(shown)}
    ${this.#stages.has(STAGES.figures) ? this.#trialForm(shown) : nothing}
    ${this.#stages.has(STAGES.rest) ? this.#whatIfs(view) : nothing}`;
  }

  /** For the plan, or for what it would be with what is tried. */
  #look(view: ReadyView): void {
    const { plan, season } = this.#trial ?? view;
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
    const { view, zone, comparison } = shown;
    const reader = readingOf(view);
    const { span } = view.season.garden;
    const valves = zone.zone.plantings.filter(({ hasShutOff }) => hasShutOff);
    const picture = guard([comparison, zone, reader.language, reader.units], () =>
      mixPicture({ comparison, plantings: zone.zone.plantings, span, reader }),
    );
    if (!this.#stages.has(STAGES.figures)) return html`${picture}`;
    return html`${picture}
      ${valves.map(({ id, name }) => calendarTemplate({ stretches: shutOffCalendar(zone, id) }, isolated(name), span, reader))}
      ${this.#remedies(view)}
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
      apply: view.readOnly || this.#trial !== undefined ? undefined : ({ edit }) => this.#apply(edit),
      tryIt: ({ edit }) => this.#try(view, edit),
      isTrying: this.#trial !== undefined,
      applied:
        applied === undefined || undoStep === undefined ? undefined : describeEdit(undoStep.before, applied, reader),
      undo: () => this.#plan.step('undo'),
    });
  }

  /** One change more, on top of those that are tried already. */
  #try({ plan, season }: ReadyView, edit: Edit | undefined): void {
    if (edit === undefined) return;
    this.#set(tryEdits(plan, season, [...(this.#trial?.edits ?? []), edit]) ?? this.#trial);
    this.#toTried();
  }

  /** The button that was pressed may be gone; what it did stands above. */
  #toTried(): void {
    void this.#host.updateComplete.then(() => {
      const heading = this.#host.renderRoot.querySelector<HTMLElement>('.tried h3');
      heading?.focus({ preventScroll: true });
      heading?.closest('.tried')?.scrollIntoView({ block: 'nearest' });
    });
  }

  #set(trial: Trial | undefined): void {
    this.#trial = trial;
    this.#host.requestUpdate();
  }

  #trialForm({ view, zone, trial }: Shown): TemplateResult {
    const { plan, season } = trial ?? view;
    return trialForm({
      season,
      zoneId: zone.zone.id,
      reader: readingOf(view),
      tryMove: (move) => this.#try(view, moveEdit(plan, move)),
    });
  }

  #tried(view: ReadyView, trial: Trial): TemplateResult {
    const { plan, season, readOnly } = view;
    const edits = readOnly ? undefined : editsToKeep(trial.edits);
    return trialBanner({
      trial,
      season,
      reader: readingOf(view),
      keep: readOnly ? undefined : () => this.#apply(editOf(trial), () => this.#set(undefined)),
      keepBeside: edits && ((name) => this.#apply({ type: 'set-what-if', name, edits }, () => this.#set(undefined))),
      takeBack: () => this.#set(tryEdits(plan, season, trial.edits.slice(0, -1))),
      drop: () => this.#set(undefined),
    });
  }

  #whatIfs(view: ReadyView): TemplateResult | typeof nothing {
    const { plan, season, readOnly } = view;
    return whatIfsSection({
      plan,
      season,
      reader: readingOf(view),
      show: (trial) => {
        this.#set(trial);
        this.#toTried();
      },
      take: readOnly ? undefined : (trial) => this.#apply(editOf(trial), () => this.#set(undefined)),
      remove: readOnly ? undefined : (name) => this.#apply({ type: 'set-what-if', name, edits: undefined }),
    });
  }

  /** `taken` is called where the edit is accepted. */
  #apply(edit: Edit, taken?: () => void): void {
    onceAnswered(this.#plan.edit(edit), ({ ok }) => {
      if (ok) this.#applied = edit;
      if (ok) taken?.();
      this.#host.requestUpdate();
    });
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
  return (plantingId) => isolated(plantings.find(({ id }) => id === plantingId)?.name ?? plantingId);
}
