/** What decides the pressure along a line: its emitters, its bore, and how it climbs. */
import { html, type TemplateResult } from 'lit';
import { fromSi, unitOf } from '../../engine/units.ts';
import { DEFAULTS } from '../../plan/defaults.ts';
import { changed } from '../../plan/edits/change.ts';
import { gardenHelp as help } from '../shared/words/garden-help.ts';
import { gardenWords as words } from '../shared/words/garden-words.ts';
import { choiceField, numberField } from './fields.ts';
import type { LineContext, WateringLine } from './form-context.ts';

export function pressureFields(line: WateringLine, context: LineContext): TemplateResult {
  const { plan, form, key, edit } = context;
  return html`<details>
    <summary>${words.more}</summary>
    <div class="part-body"><div class="fields">
      ${emitterFields(line, context)}
      ${numberField({
        ...{ form, key: key('bore'), label: words.bore, help: help.bore, unit: unitOf('bore', plan.units).name },
        ...{ value: line.insideDiameter, otherwise: words.usual },
        edit: (insideDiameter) => edit(changed(line, { insideDiameter })),
      })}
      ${numberField({
        ...{ form, key: key('rise'), label: words.rise, help: help.rise, unit: '%' },
        ...{ value: line.risePercent, otherwise: '0' },
        edit: (risePercent) => edit(changed(line, { risePercent })),
      })}
    </div></div>
  </details>`;
}

function emitterFields(line: WateringLine, { plan, form, key, edit }: LineContext): TemplateResult {
  const { emitter } = line;
  const usual = Number(fromSi(DEFAULTS.leastPressureKpa, 'pressure', plan.units).toPrecision(3));
  const asKind = (kind: string): WateringLine =>
    changed(line, { emitter: kind === 'plain' ? { kind, exponent: DEFAULTS.exponent } : undefined });
  return html`${choiceField({
    ...{ form, key: key('emitter'), label: words.emitter, help: help.emitter },
    value: emitter?.kind ?? DEFAULTS.emitter,
    options: (['compensating', 'plain'] as const).map((kind) => ({ value: kind, label: words[kind] })),
    edit: (kind) => edit(asKind(kind)),
  })}
  ${
    emitter?.kind === 'plain'
      ? numberField({
          ...{ form, key: key('exponent'), label: words.exponent, help: help.exponent, value: emitter.exponent },
          edit: (exponent) => edit({ ...line, emitter: { ...emitter, exponent: exponent ?? Number.NaN } }),
        })
      : numberField({
          ...{ form, key: key('least'), label: words.leastPressure, unit: unitOf('pressure', plan.units).name },
          ...{ value: emitter?.leastPressure, otherwise: String(usual) },
          edit: (leastPressure) =>
            edit(
              changed(line, {
                emitter: leastPressure === undefined ? undefined : { kind: 'compensating', leastPressure },
              }),
            ),
        })
  }`;
}
