import { html, nothing, type TemplateResult } from 'lit';
import { describeVersionChange } from '../../language/describe-version-change.ts';
import { versionChangesWords } from '../../language/en/version-changes.ts';
import type { Reader } from '../../language/reader.ts';
import type { PlanMigration } from '../../plan/reading/check-plan.ts';

/** What is different for a plan that an earlier version of the format wrote. */
export function migrationTemplate(
  migration: PlanMigration | undefined,
  reader: Reader,
): TemplateResult | typeof nothing {
  if (migration === undefined || migration.changes.length === 0) return nothing;
  return html`<section class="migration">
    <p>${versionChangesWords(reader.language).title}</p>
    <ul>
      ${migration.changes.map((change) => html`<li>${describeVersionChange(change, reader)}</li>`)}
    </ul>
  </section>`;
}
