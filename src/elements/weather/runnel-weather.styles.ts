import { css } from 'lit';

/**
 * `.places`: what was found lies over nothing: the page goes on beneath it.
 * `.climate`: wide enough for twelve months on a phone, no wider than a column of text.
 */
export const weatherStyles = css`
  .search {
    max-inline-size: 30rem;
    margin-block-end: 0.9rem;
  }

  a {
    color: inherit;
  }

  .search > button {
    justify-self: start;
  }

  .places {
    display: grid;
    gap: 0.25rem;
    margin: 0.25rem 0;
    padding: 0;
    list-style: none;
  }

  .places button {
    inline-size: 100%;
    min-block-size: 2.25rem;
    text-align: start;
  }

  .climate {
    max-inline-size: 34rem;
    margin: 0 0 0.5rem;
  }

  figcaption {
    margin-block-end: 0.4rem;
  }

  svg {
    display: block;
    inline-size: 100%;
    block-size: auto;
    overflow: visible;
  }

  text {
    fill: var(--_quiet);
    font: 12px var(--_font);
    text-anchor: middle;
  }

  .ground {
    stroke: var(--_line);
  }

  rect.rain {
    fill: var(--_rain);
    opacity: 0.45;
  }

  .eto-line {
    fill: none;
    stroke: var(--_ink);
    stroke-width: 1.5;
  }

  .eto {
    fill: var(--_ink);
  }

  rect.season {
    fill: var(--_growth);
  }

  .key {
    display: flex;
    flex-wrap: wrap;
    gap: 0.2rem 1.25rem;
    color: var(--_quiet);
    font-size: var(--_size-small);
  }

  .key i {
    display: inline-block;
    inline-size: 0.9rem;
    margin-inline-end: 0.4rem;
    vertical-align: middle;
  }

  .eto-key {
    block-size: 0.15rem;
    background: var(--_ink);
  }

  .rain-key {
    block-size: 0.75rem;
    background: var(--_rain);
    opacity: 0.45;
  }

  .season-key {
    block-size: 0.3rem;
    background: var(--_growth);
  }

  .band {
    inline-size: auto;
    border-collapse: collapse;
    margin-block: 0.5rem;
  }

  .band :is(th, td) {
    padding: 0.3rem 1rem 0.3rem 0;
    border-block-end: 1px solid var(--_line);
    text-align: start;
    font-weight: 400;
    white-space: normal;
    overflow-wrap: anywhere;
    vertical-align: baseline;
  }

  .season td > .quiet {
    display: block;
  }

  .band thead th {
    color: var(--_quiet);
    font-size: var(--_size-small);
  }

  .preview {
    display: grid;
    gap: 0.5rem;
    justify-items: start;
    margin-block: 0.5rem;
    padding-inline-start: 0.75rem;
    border-inline-start: 4px solid var(--_line);
  }

  .preview ul {
    margin: 0;
    padding-inline-start: 1.2rem;
  }

  .actions {
    align-items: center;
    margin-block: 0.4rem;
  }

  .status > p,
  [role='alert'] > p {
    margin-block-start: 0.4rem;
  }

  .try {
    display: grid;
    gap: 0.5rem;
    margin-block-start: 0.5rem;
  }

  .preview > form {
    align-items: end;
    inline-size: 100%;
  }

  .preview > form > label {
    flex: 0 1 26rem;
    max-inline-size: 100%;
  }

  .preview [name='name'] {
    box-sizing: border-box;
    inline-size: 100%;
  }

  .main:not(:disabled) {
    border-color: var(--_ink);
    background: var(--_ink);
    color: var(--_paper);
  }

  .main:not(:disabled):hover {
    background: color-mix(in oklab, var(--_ink) 85%, var(--_paper));
  }

  .departures {
    margin: 0;
    padding-inline-start: 1.2rem;
  }

  progress {
    inline-size: 6rem;
    accent-color: var(--_ink);
  }
`;
