/** What stands over the page while a season is computed. */
import { css, html, type TemplateResult } from 'lit';
import { planElementWords } from '../../language/en/plan-element.ts';
import type { Language } from '../../language/language.ts';

/** Over the page, and only once somebody waits: nothing that stands there moves. */
export const progressStyles = css`
  .progress {
    position: sticky;
    inset-block-start: 0;
    z-index: 300;
    block-size: 0;
    visibility: hidden;
    animation: show 0s 0.3s forwards;
  }

  .progress p {
    position: absolute;
    inset-inline-start: 50%;
    translate: -50% 0;
    margin: 0;
    padding: 0.5rem 1rem;
    border-radius: 0 0 0.4rem 0.4rem;
    background: Canvas;
    color: CanvasText;
    font: 0.9375rem system-ui, sans-serif;
    white-space: nowrap;
    box-shadow: 0 0.1rem 0.5rem rgb(0 0 0 / 30%);
  }

  :host(:dir(rtl)) .progress p {
    translate: 50% 0;
  }

  @keyframes show {
    to {
      visibility: visible;
    }
  }

  @media print {
    .progress {
      display: none;
    }
  }
`;

export interface Progress {
  readonly done: number;
  readonly of: number;
  readonly language: Language;
}

export function progressStrip({ done, of, language }: Progress): TemplateResult {
  const { computing } = planElementWords(language);
  return html`<div class="progress" role="status"><p>
    ${computing} <progress aria-hidden="true" max=${of} .value=${Math.min(done, of)}></progress>
  </p></div>`;
}
