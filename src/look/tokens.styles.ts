import { css } from 'lit';

/**
 * The kit's look in a few public custom properties. Inside, `--_name` is the public one or its default; the default
 * follows the `color-scheme` that the page, or anything around an element, declares. Ink, quiet ink, water, rain, growth
 * and short stand at 4.5:1 or more on paper in both schemes. In forced colours the reader's own system colours win.
 *
 * Letters' shapes that a site gives to everything end here. A grid lives in light DOM and has no `:host`: it puts these
 * declarations into a rule of its own.
 *
 * `--_size`: the floor is for sites that make the root's letters small to count in tens.
 */
export const tokenDeclarations = css`
  --_paper: var(--runnel-paper, light-dark(#fbfaf5, #171d1c));
  --_ink: var(--runnel-ink, light-dark(#22302d, #e8ebe3));
  --_quiet: var(--runnel-quiet, light-dark(#586560, #a9b5ae));
  --_line: var(--runnel-line, light-dark(#d8d7cb, #35413e));
  --_water: var(--runnel-water, light-dark(#12697a, #5fbcca));
  --_rain: var(--runnel-rain, light-dark(#4669ad, #9ab6f0));
  --_growth: var(--runnel-growth, light-dark(#3c7338, #93c684));
  --_short: var(--runnel-short, light-dark(#ad3a1c, #f38f6b));
  --_font: var(--runnel-font, system-ui, sans-serif);
  --_size: var(--runnel-font-size, max(0.9375rem, 13px));
  --_size-small: calc(var(--_size) * 0.87);
  --_size-large: calc(var(--_size) * 1.3);
  letter-spacing: normal;
  word-spacing: normal;
  text-transform: none;
  text-shadow: none;
  font-style: normal;
`;

export const forcedTokenDeclarations = css`
  --_paper: Canvas;
  --_ink: CanvasText;
  --_quiet: CanvasText;
  --_line: CanvasText;
  --_water: CanvasText;
  --_rain: CanvasText;
  --_growth: CanvasText;
  --_short: CanvasText;
`;

/**
 * Tokens and the ground of every element with a shadow root.
 *
 * `:host(:dir(rtl))`: The kit's words run left to right within a page that does not: "30 min" stays so, at the
 * page's own edge.
 * `@media print`: paper is white, whatever the screen was.
 */
export const tokens = css`
  :host {
    ${tokenDeclarations}
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
      ${forcedTokenDeclarations}
    }
  }
`;
