import { html, svg, type TemplateResult } from 'lit';
import type { NoticeSeverity } from '../../explain/notices/notice.ts';

/** A shape of its own for each, so that none is told by colour alone. */
const SHAPES: Readonly<Record<NoticeSeverity, TemplateResult>> = {
  danger: svg`<path class="filled" d="M8 .8 15.6 15H.4z" /><path class="cut" d="M8 5.5v4.6M8 11.6v1.6" />`,
  warning: svg`<path class="outlined" d="M8 2 14.6 14H1.4z" /><path class="mark" d="M8 6.5v3.6M8 11.4v1.2" />`,
  note: svg`<circle class="outlined" cx="8" cy="8" r="6.2" /><path class="mark" d="M8 7v4.4M8 4.4v1.3" />`,
};

export function severitySign(severity: NoticeSeverity): TemplateResult {
  return html`<svg class="sign" viewBox="0 0 16 16" width="16" height="16" aria-hidden="true">${SHAPES[severity]}</svg>`;
}
