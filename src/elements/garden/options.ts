/** The options of a choice, those that go together under the name of their group. */
import { html, type TemplateResult } from 'lit';

export interface Option<Value extends string> {
  readonly value: Value;
  readonly label: string;
  /** Options that follow one another with the same one stand under it. */
  readonly group?: string;
}

export function optionsTemplate<Value extends string>(options: readonly Option<Value>[], chosen: Value) {
  const option = ({ value, label }: Option<Value>): TemplateResult =>
    html`<option value=${value} ?selected=${value === chosen}>${label}</option>`;
  return inGroups(options).map(({ group, members }) =>
    group === undefined ? members.map(option) : html`<optgroup label=${group}>${members.map(option)}</optgroup>`,
  );
}

function inGroups<Value extends string>(options: readonly Option<Value>[]) {
  const groups: { readonly group: string | undefined; readonly members: Option<Value>[] }[] = [];
  for (const option of options) {
    const last = groups.at(-1);
    if (last !== undefined && last.group === option.group) last.members.push(option);
    else groups.push({ group: option.group, members: [option] });
  }
  return groups;
}
