/** A lane beneath those of the zones: the tank's level by week, or the meter's reading of each week against what a week may use. */
import { html, svg, type TemplateResult } from 'lit';
import { chartWords } from '../../language/en/chart.ts';
import { formatQuantity } from '../../language/format/quantity.ts';
import type { Reader } from '../../language/reader.ts';
import type { Reserve } from './reserve.ts';

/** Units of the drawing from foot to top. */
const HEIGHT = 100;

/** Its foot is nothing, its top the tank's size or the allowance; what goes beyond an allowance is filled as short. */
export function reserveLane({ kind, weeklyLitres, mostLitres }: Reserve, reader: Reader): TemplateResult {
  const { names } = chartWords(reader.language);
  const most = Math.max(1, mostLitres);
  let within = '';
  let beyond = '';
  for (const [week, litres] of weeklyLitres.entries()) {
    const height = Math.round(HEIGHT * Math.min(1, Math.max(0, litres / most)));
    const bar = `M${week},${HEIGHT}v-${height}h1v${height}z`;
    if (kind === 'weekly-allowance' && litres > most * (1 + 1e-9)) beyond += bar;
    else within += bar;
  }
  const said = `${names[kind]}, ${names.bound[kind]} ${formatQuantity(mostLitres, 'volume', reader)}`;
  return html`<div class="reserve" title=${said}>
    <span>${names[kind]}</span>
    <svg viewBox="0 0 ${weeklyLitres.length} ${HEIGHT}" preserveAspectRatio="none" aria-hidden="true">
      ${svg`<path class="within" d=${within} /><path class="beyond" d=${beyond} />`}
    </svg>
  </div>`;
}
