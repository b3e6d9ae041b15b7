import { html, type LitElement, nothing, type TemplateResult } from 'lit';
import { guard } from 'lit/directives/guard.js';
import type { ZoneRule } from '../../engine/garden.ts';
import type { Catalogue } from '../../engine/line/catalogue.ts';
import { compareZone, comparingZone, rulesOf, type ZoneComparison } from '../../engine/mix/compare-zone.ts';
import { shutOffCalendar } from '../../engine/mix/shut-off-calendar.ts';
import type { ZoneSeason } from '../../engine/season/season.ts';
import { describeEdit } from '../../language/describe-edit.ts';
import type { Edit } from '../../plan/edits/edit.ts';
import type { MixRemedy } from '../../remedies/mix/remedy.ts';
import { adoptStyles } from '../shared/adopt-styles.ts';
import { faultsTemplate } from '../shared/faults-template.ts';
import { inSlices } from '../shared/in-slices.ts';
import type { PlanConsumer } from '../shared/plan-consumer.ts';
import { isReady, type ReadyView, readingOf, waitingTemplate } from '../shared/plan-state.ts';
import { mixWords, remedyWords, trialWords } from '../shared/words/mix-words.ts';
import { mixHeader } from './mix-header.ts';
import { mixPictureStyles } from './mix-picture.styles.ts';
import { mixPicture } from './mix-picture.ts';
import { calendarTemplate, remedyList } from './mix-remedies.ts';
import { plantingTable, type RuleRow, ruleTable, weekTable } from './mix-tables.ts';
import { trialBanner, trialForm } from './mix-trial.ts';
import { RemedySearch } from './remedy-search.ts';
import { isSameRule, nameOfRule } from './rule-choice.ts';
import { mixStyles } from './runnel-mix.styles.ts';
import { Stages } from './stages.ts';
import { type PlantingMove, type Trial, tryMove } from './trial.ts';

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
  /** The edit of the remedy that was taken last. */
  #taken: Edit | undefined;
  #showsWeeks = false;

  readonly #host: MixHost;
  readonly #plan: PlanConsumer;
  readonly #search: RemedySearch;
  readonly #stages: Stages;
  /** The zone whose first comparison is being worked out. */
  #under: ZoneSeason | undefined;
  #comparing: Promise<void> | undefined;
  #compared:
    | { readonly zone: ZoneSeason; readonly rule: ZoneRule | undefined; readonly comparison: ZoneComparison }
    | undefined;

  constructor(host: MixHost, plan: PlanConsumer) {
    this.#host = host;
    this.#plan = plan;
    adoptStyles(host.renderRoot, mixPictureStyles);
    adoptStyles(host.renderRoot, mixStyles);
    this.#search = new RemedySearch(host);
    this.#stages = new Stages(host);
  }

  /** Waits for the next stage of the first drawing; false where there was one. */
  async isDrawn(): Promise<boolean> {
    if (this.#comparing === undefined) return this.#stages.isDrawn();
    await this.#comparing;
    return false;
  }

  /** Before each drawing: lets go of what is over, and looks for remedies. */
  follow(): void {
    const { view } = this.#plan;
    if (this.#trial !== undefined && this.#trial.from !== view.plan) this.#trial = undefined;
    if (this.#taken !== view.undoStep?.edit) this.#taken = undefined;
    if (!isReady(view)) {
      this.#search.stop();
      return;
    }
    if (this.#trial !== undefined) this.#search.stop();
    else if (this.#stages.has(STAGES.figures)) this.#look(view);
    const last = this.#search.found === undefined ? STAGES.figures : STAGES.rest;
    this.#stages.until = this.#compared === undefined ? STAGES.comparison : last;
  }

  render(): TemplateResult | typeof nothing {
    const { view } = this.#plan;
    if (!isReady(view)) return waitingTemplate(view);
    const trial = this.#trial;
    const zoneId = zoneShown(view).zone.id;
    const season = trial?.season ?? view.season;
    const zone = season.zones.find((candidate) => candidate.zone.id === zoneId);
    if (zone === undefined || !this.#stages.has(STAGES.comparison)) return waitingTemplate(view);
    const comparison = this.#compare(season, zone);
    if (comparison === undefined) return waitingTemplate(view);
    if (!this.#stages.has(STAGES.header)) return nothing;
    const shown = { view, zone, comparison, trial };
    return html`<div role="alert">${faultsTemplate('edit', this.#plan.refused, readingOf(view))}</div>
    ${this.#header(shown)} ${zone.plantings.length === 0 ? html`<p class="waiting">${mixWords.emptyZone}</p>` : this.#body(shown)}
    ${this.#stages.has(STAGES.figures) ? this.#trialPart(shown) : nothing}`;
  }

  #look({ plan, season, ...view }: ReadyView): void {
    const { zone } = zoneShown({ ...view, plan, season });
    const compared = this.#compared;
    const comparison = compared?.zone.zone === zone && compared.rule === undefined ? compared.comparison : undefined;
    this.#search.for({ plan, season, zoneId: zone.id, catalogue: this.#host.catalogue, comparison });
  }

  /** Undefined while the first one is being worked out. */
  #compare(season: ReadyView['season'], zone: ZoneSeason): ZoneComparison | undefined {
    const rule = this.#asIf?.zoneId === zone.zone.id ? this.#asIf.rule : undefined;
    if (this.#compared === undefined) {
      this.#beginToCompare(season, zone);
      return undefined;
    }
    if (this.#compared.zone !== zone || this.#compared.rule !== rule) {
      this.#compared = { zone, rule, comparison: compareZone(season, zone.zone.id, rule) };
    }
    return this.#compared.comparison;
  }

  /** The first time it is slow: a little at a time. */
  #beginToCompare(season: ReadyView['season'], zone: ZoneSeason): void {
    if (this.#under === zone) return;
    this.#under = zone;
    this.#comparing = new Promise((resolve) => {
      inSlices({
        steps: comparingZone(season, zone.zone.id),
        isWanted: () => {
          if (this.#under !== zone) resolve();
          return this.#under === zone;
        },
        onEnd: (comparison) => {
          this.#compared = { zone, rule: undefined, comparison };
          this.#comparing = undefined;
          this.#host.requestUpdate();
          resolve();
        },
      });
    });
  }

  #header({ view, zone, comparison }: Shown): TemplateResult {
    const zoneId = zone.zone.id;
    return mixHeader({
      zones: view.season.zones.map((each) => each.zone),
      zone,
      comparison,
      rule: this.#asIf?.zoneId === zoneId ? this.#asIf.rule : undefined,
      reading: readingOf(view),
      chooseZone: (id) => this.#plan.select({ ...view.selection, zone: id, planting: undefined }),
      chooseRule: (rule) => {
        this.#asIf = rule === undefined ? undefined : { zoneId, rule };
        this.#host.requestUpdate();
      },
    });
  }

  #body({ view, zone, comparison, trial }: Shown): TemplateResult | typeof nothing {
    if (!this.#stages.has(STAGES.picture)) return nothing;
    const reading = readingOf(view);
    const { span } = view.season.garden;
    const toggled = (event: Event) => {
      this.#showsWeeks = (event.target as HTMLDetailsElement).open;
      this.#host.requestUpdate();
    };
    const valves = zone.zone.plantings.filter(({ hasShutOff }) => hasShutOff);
    const picture = guard([comparison, zone, reading.units, reading.locale], () =>
      mixPicture({ comparison, plantings: zone.zone.plantings, span, reading }),
    );
    if (!this.#stages.has(STAGES.figures)) return html`${picture}`;
    return html`${picture}
      ${valves.map(({ id, name }) => calendarTemplate({ stretches: shutOffCalendar(zone, id) }, name, span, reading.locale))}
      ${trial === undefined ? this.#remedies(view) : html`<p class="quiet">${trialWords.remediesLater}</p>`}
      <section>
        <h3>${mixWords.table.title}</h3>
        ${plantingTable(comparison, reading)}
        <details @toggle=${toggled}>
          <summary>${mixWords.table.weekly}</summary>
          ${this.#showsWeeks ? weekTable(comparison, span.firstDay, reading) : nothing}
        </details>
        ${trial === undefined ? this.#rules(view, zone) : nothing}
      </section>`;
  }

  #remedies(view: ReadyView): TemplateResult {
    const { found, tried } = this.#search;
    const reading = readingOf(view);
    const apply = (remedy: MixRemedy) => {
      if (this.#plan.edit(remedy.edit).ok) this.#taken = remedy.edit;
      this.#host.requestUpdate();
    };
    return html`<section part="remedies">
      <h3>${remedyWords.title}</h3>
      <div role="status">
        ${found === undefined ? html`<p class="quiet">${remedyWords.searching(String(tried))}</p>` : nothing}
        ${
          this.#taken === undefined || view.undoStep === undefined
            ? nothing
            : html`<p class="taken">
                ${remedyWords.done(describeEdit(view.undoStep.before, this.#taken, reading))}
                <button @click=${() => this.#plan.step('undo')}>${remedyWords.undo}</button>
              </p>`
        }
      </div>
      ${
        found === undefined || !this.#stages.has(STAGES.remedies)
          ? nothing
          : remedyList({
              found,
              isBegun: !this.#stages.has(STAGES.rest),
              nameOf: nameIn(view),
              span: view.season.garden.span,
              reading,
              apply: view.readOnly ? undefined : apply,
            })
      }
    </section>`;
  }

  #rules(view: ReadyView, zone: ZoneSeason): TemplateResult | typeof nothing {
    const { found } = this.#search;
    if (found === undefined || found.rules.length === 0 || !this.#stages.has(STAGES.rest)) return nothing;
    const { rule: now } = zone.zone;
    const rows = rulesOf(zone).flatMap((rule): readonly RuleRow[] => {
      if (isSameRule(rule, now)) return [{ rule, figures: found.before, isNow: true }];
      const outcome = found.rules.find(
        ({ changes: [change] }) => change?.kind === 'rule' && isSameRule(change.rule, rule),
      );
      return outcome === undefined ? [] : [{ rule, figures: outcome.after, isNow: false }];
    });
    return html`<details>
      <summary>${mixWords.table.rules}</summary>
      ${ruleTable(rows, (rule) => nameOfRule(rule, zone.zone), readingOf(view))}
    </details>`;
  }

  #trialPart({ view, zone, trial }: Shown): TemplateResult | typeof nothing {
    const { season, plan, readOnly } = view;
    if (trial === undefined) {
      const move = (wanted: PlantingMove) => {
        this.#trial = tryMove(plan, season, wanted);
        this.#host.requestUpdate();
      };
      return trialForm({ season, zoneId: zone.zone.id, tryMove: move });
    }
    const end = () => {
      this.#trial = undefined;
      this.#host.requestUpdate();
    };
    const keep = () => {
      if (!this.#plan.edit(trial.edit).ok) return;
      this.#taken = trial.edit;
      end();
    };
    return trialBanner({ trial, season, reading: readingOf(view), keep: readOnly ? undefined : keep, drop: end });
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
