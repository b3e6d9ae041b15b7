import { css, unsafeCSS } from 'lit';
import { forcedTokenDeclarations, tokenDeclarations } from './tokens.ts';

/** The tokens for a rule in a style of Lit's: a grid lives in light DOM, has no `:host`, and puts them into a rule of its own. */
export const tokenRules = unsafeCSS(tokenDeclarations);
export const forcedTokenRules = unsafeCSS(forcedTokenDeclarations);

/**
 * Tokens and the ground of every element with a shadow root.
 *
 * `:host(:dir(rtl))`: The kit's words run left to right within a page that does not: "30 min" stays so, at the
 * page's own edge.
 * `@media print`: paper is white, whatever the screen was.
 */
export const tokens = css`
  :host {
    ${tokenRules}
    display: block;
    box-sizing: border-box;
    background: var(--_paper);
    color: var(--_ink);
    font-family: var(--_font);
    font-size: var(--_size);
    font-variant-numeric: tabular-nums lining-nums;
    line-height: 1.45;
    text-align: start;
    overflow-wrap: break-word;
    -webkit-text-size-adjust: 100%;
  }

  :host([hidden]) {
    display: none;
  }

  *,
  *::before,
  *::after {
    box-sizing: inherit;
  }

  :host(:dir(rtl)) {
    text-align: right;
  }

  :host(:dir(rtl))
    :is(a, button, dd, dt, h2, h3, h4, label, legend, li, option, output, p, span, strong, summary, td, th) {
    unicode-bidi: plaintext;
  }

  @media print {
    :host {
      color-scheme: light;
      background: none;
    }
  }

  @media (forced-colors: active) {
    :host {
      ${forcedTokenRules}
    }
  }
`;
