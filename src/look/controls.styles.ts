import { css, unsafeCSS } from 'lit';
import { visuallyHidden } from './visually-hidden.ts';

/**
 * Buttons, choices, headings and tables, alike in every element with a shadow root.
 *
 * `h2, h3, p, li, summary, button.plain, .choices label`: a name of one very long word would push the page apart.
 */
export const controls = css`
  h2,
  h3,
  p,
  ul,
  ol,
  dl,
  dd {
    margin: 0;
    padding: 0;
  }

  ul,
  ol {
    list-style: none;
  }

  h2 {
    font-size: var(--_size-large);
    font-weight: 650;
    line-height: 1.2;
    text-wrap: balance;
  }

  h3 {
    font-size: inherit;
    font-weight: 650;
  }

  h2,
  h3,
  p,
  li,
  summary,
  button.plain,
  .choices label {
    overflow-wrap: anywhere;
  }

  .choices label {
    min-inline-size: 0;
    max-inline-size: 100%;
  }

  .waiting {
    padding: 1rem 0;
    max-inline-size: 42rem;
    color: var(--_quiet);
  }

  .quiet {
    color: var(--_quiet);
  }

  .small {
    font-size: var(--_size-small);
  }

  button,
  select {
    min-block-size: 2rem;
    margin: 0;
    border: 1px solid var(--_quiet);
    border-radius: 0.4rem;
    background: var(--_paper);
    color: var(--_ink);
    font: inherit;
    cursor: pointer;
  }

  button {
    padding-inline: 0.75rem;
  }

  select {
    max-inline-size: 100%;
    padding-inline: 0.4rem;
  }

  button:disabled {
    border-color: var(--_line);
    color: var(--_quiet);
    cursor: default;
  }

  button.plain {
    min-block-size: 1.5rem;
    padding: 0;
    border: 0;
    background: none;
    color: var(--_ink);
    text-align: start;
    text-decoration: underline;
    text-decoration-thickness: 1px;
    text-underline-offset: 0.2em;
  }

  input:where([type='checkbox'], [type='radio']) {
    inline-size: 1rem;
    block-size: 1rem;
    accent-color: var(--_ink);
  }

  /* A browser's own empty box is grey on a dark page, as if it could not be ticked. */
  input:where([type='checkbox'], [type='radio']):where(:not(:checked, :disabled)) {
    appearance: none;
    flex: none;
    border: 1.5px solid var(--_ink);
    border-radius: 0.2rem;
    background: var(--_paper);
  }

  input:where([type='radio']) {
    border-radius: 50%;
  }

  @media (hover: hover) {
    button:not(:disabled, .plain):hover {
      background: color-mix(in oklab, var(--_ink) 10%, var(--_paper));
    }

    button.plain:hover,
    summary:hover {
      text-decoration-thickness: 2px;
    }
  }

  @media (pointer: coarse) {
    button,
    select,
    summary {
      min-block-size: 2.75rem;
    }

    summary {
      align-content: center;
    }
  }

  summary {
    inline-size: fit-content;
    color: var(--_ink);
    cursor: pointer;
    text-decoration: underline;
    text-decoration-thickness: 1px;
    text-underline-offset: 0.2em;
  }

  :focus-visible {
    outline: 2px solid var(--_ink);
    outline-offset: 2px;
  }

  table {
    border-collapse: collapse;
    inline-size: 100%;
  }

  th,
  td {
    padding: 0.2rem 0.75rem 0.2rem 0;
    text-align: end;
    white-space: nowrap;
  }

  th:first-child {
    text-align: start;
  }

  th {
    font-weight: 650;
  }

  .visually-hidden {
    ${unsafeCSS(visuallyHidden)}
  }
`;
