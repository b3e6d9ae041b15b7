import { css } from 'lit';

/** `.is-assumed`: what nobody has said stands on a broken line. What stands in the later steps is in `later-steps.styles.ts`. */
export const startStyles = css`
  :host {
    container-type: inline-size;
    padding-block-end: 1rem;
  }

  h2 {
    margin-block: 0.25rem;
    font-size: calc(var(--_size) * 1.7);
    outline-offset: 0.3rem;
  }

  .lead {
    max-inline-size: 56ch;
    margin-block-end: 1rem;
    color: var(--_quiet);
  }

  .columns {
    display: grid;
    grid-template-columns: minmax(0, 1fr) 22.5rem;
    gap: 1rem 3rem;
    align-items: start;
  }

  a {
    color: inherit;
  }

  .two > div > :first-child {
    margin-block-start: 0;
  }

  .step .fields {
    grid-template-columns: repeat(auto-fill, minmax(min(100%, 12.5rem), 1fr));
    gap: 0.6rem 1.25rem;
    align-items: start;
  }

  .two {
    display: grid;
    grid-template-columns: repeat(2, minmax(0, 1fr));
    gap: 0.5rem 2rem;
  }

  .step,
  .step > * {
    min-inline-size: 0;
  }

  .step input:not([type='radio'], [type='checkbox']),
  .step select {
    inline-size: 100%;
    min-block-size: 2.2rem;
    box-sizing: border-box;
  }

  .label,
  legend b {
    font-weight: 600;
  }

  .is-assumed input:not([type='radio'], [type='checkbox']),
  .is-assumed select {
    border-style: dashed;
    font-style: italic;
  }

  .tag {
    color: var(--_quiet);
    font-size: var(--_size-small);
    font-style: italic;
    font-weight: 400;
  }

  .tag::before {
    content: '\\25cc' / '';
    margin-inline-end: 0.25em;
  }

  .told {
    margin-block: 0.5rem;
    font-weight: 600;
  }

  .told.is-assumed {
    font-style: italic;
    font-weight: 400;
  }

  .caution {
    max-inline-size: 60ch;
    margin-block: 0.75rem;
    padding-inline-start: 0.75rem;
    border-inline-start: 2px solid var(--_ink);
    font-size: var(--_size-small);
  }

  .progress {
    display: flex;
    gap: 0.5rem 1rem;
    align-items: center;
    margin-block-end: 1rem;
  }

  .progress ol {
    display: grid;
    grid-template-columns: repeat(5, minmax(0, 1fr));
    flex: 1;
    border-block-end: 2px solid var(--_line);
  }

  .progress li button {
    display: flex;
    gap: 0.5rem;
    align-items: center;
    inline-size: 100%;
    min-block-size: 2.4rem;
    padding-inline: 0.25rem;
    border: 0;
    background: none;
    text-align: start;
  }

  .progress b {
    font-weight: 500;
  }

  .progress [aria-current] b {
    font-weight: 700;
  }

  .dot {
    display: grid;
    place-items: center;
    flex: none;
    inline-size: 1.6rem;
    block-size: 1.6rem;
    border: 1.5px solid var(--_quiet);
    border-radius: 50%;
    font-size: var(--_size-small);
  }

  .done .dot {
    border-color: var(--_ink);
    background: color-mix(in oklab, var(--_ink) 16%, var(--_paper));
  }

  .progress small {
    display: block;
    color: var(--_quiet);
    font-size: var(--_size-small);
  }

  [aria-current] .dot {
    border-color: var(--_ink);
    background: var(--_ink);
    color: var(--_paper);
  }

  .cards {
    margin-block: 0.75rem 0.4rem;
    padding: 0;
    border: 0;
  }

  .card-row {
    display: grid;
    grid-template-columns: repeat(auto-fit, minmax(8.5rem, 1fr));
    gap: 0.6rem;
    clear: both;
    inline-size: 100%;
  }

  .card {
    display: grid;
    position: relative;
    align-content: start;
    padding: 2.1rem 0.5rem 0.5rem;
    border: 1px solid var(--_line);
    border-radius: 0.5rem;
    line-height: 1.25;
    cursor: pointer;
  }

  .card input {
    position: absolute;
    inset-block-start: 0.5rem;
    inset-inline-start: 0.5rem;
    inline-size: 1.1rem;
    block-size: 1.1rem;
    margin: 0;
    accent-color: var(--_ink);
  }

  .card .drawing {
    max-block-size: 6.5rem;
  }

  .card:has(:checked) {
    border-color: var(--_ink);
    box-shadow: inset 0 0 0 1px var(--_ink);
  }

  .is-assumed .card:has(:checked) {
    border-style: dashed;
    box-shadow: none;
  }

  .card:has(:focus-visible) {
    outline: 2px solid var(--_ink);
    outline-offset: 2px;
  }

  .says {
    color: var(--_quiet);
    font-size: var(--_size-small);
  }

  .do {
    display: grid;
    grid-template-columns: minmax(0, 9rem) minmax(0, 1fr);
    gap: 1rem;
    align-items: center;
    margin-block: 0.5rem 1rem;
  }

  .do > ol:only-child {
    grid-column: 1 / -1;
  }

  .do ol,
  .worst {
    display: grid;
    gap: 0.35rem;
    padding-inline-start: 1.4rem;
    list-style: decimal;
  }

  .result {
    margin-block: 0.75rem;
  }

  .assumable {
    margin-block: 0.75rem;
  }
`;
