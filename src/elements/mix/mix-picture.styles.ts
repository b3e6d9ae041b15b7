import { css } from 'lit';

export const mixPictureStyles = css`
  .definitions {
    position: absolute;
  }

  .picture {
    display: grid;
    gap: 0;
  }

  .picture > li {
    display: grid;
    grid-template-columns: minmax(11rem, 1fr) minmax(14rem, 1.1fr) minmax(16rem, 1.4fr);
    gap: 0.5rem 2rem;
    align-items: center;
    padding-block: 0.9rem;
    border-block-start: 1px solid var(--_line);
  }

  .who {
    display: grid;
    gap: 0.2rem;
  }

  .verdict {
    display: grid;
  }

  .verdict :is(.small) {
    color: var(--_quiet);
  }

  :is(.short, .none) strong {
    color: var(--_short);
  }

  .right strong {
    color: var(--_growth);
  }

  .bars {
    display: grid;
    grid-template-columns: auto minmax(0, 1fr);
    gap: 0.35rem 0.75rem;
    align-items: center;
    container-type: inline-size;
  }

  .bars dt {
    color: var(--_quiet);
  }

  .bars dd {
    display: grid;
    grid-template-columns: minmax(0, 1fr) 4.5em 5.5em;
    gap: 0.6rem;
    align-items: center;
  }

  .bars span {
    text-align: end;
    white-space: nowrap;
  }

  .bar {
    inline-size: 100%;
    block-size: 0.85rem;
    overflow: visible;
  }

  .strip {
    inline-size: 100%;
    max-inline-size: 30rem;
  }

  .strip text {
    fill: var(--_quiet);
    font-size: 9px;
  }

  .need {
    fill: none;
    stroke: var(--_ink);
    stroke-width: 1.5;
    vector-effect: non-scaling-stroke;
  }

  .base {
    fill: none;
    stroke: var(--_line);
  }

  .stays {
    fill: var(--_water);
  }

  .hatch-ground {
    fill: color-mix(in oklab, var(--_quiet) 22%, var(--_paper));
  }

  .hatch-line {
    fill: var(--_quiet);
  }

  path.short {
    fill: var(--_short);
  }

  .key {
    display: flex;
    flex-wrap: wrap;
    gap: 0.25rem 1.25rem;
    margin-block-start: -1rem;
    color: var(--_quiet);
  }

  .key li {
    display: flex;
    gap: 0.4rem;
    align-items: center;
  }

  .swatch {
    inline-size: 1.5rem;
    block-size: 0.75rem;
  }

  @container (max-width: 16rem) {
    .bars dd {
      grid-template-columns: minmax(0, 1fr);
      gap: 0.1rem;
    }
  }

  @media (max-width: 60rem) {
    .picture > li {
      grid-template-columns: minmax(0, 1fr);
    }
  }
`;
