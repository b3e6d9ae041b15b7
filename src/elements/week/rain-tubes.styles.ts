import { css, unsafeCSS } from 'lit';
import { textField } from '../../look/text-field.ts';

/** The gauge, and other fields of the week. */
export const rainTubesStyles = css`
  .rain {
    color: var(--_rain);
  }

  .tubes {
    display: grid;
    grid-template-columns: repeat(7, minmax(0, 1fr));
    gap: 0.25rem;
    margin-block-start: 0.4rem;
  }

  .tube {
    position: relative;
    display: grid;
    justify-items: stretch;
    text-align: center;
  }

  .tube.now > .small {
    font-weight: 700;
  }

  .tube button {
    min-block-size: 2.75rem;
    padding: 0;
    border: 0;
    background: none;
    font-size: 1.3rem;
    font-weight: 400;
  }

  .glass {
    position: relative;
    overflow: hidden;
    block-size: 3.75rem;
    border: 1.5px solid var(--_ink);
    border-block-start: 0;
    border-radius: 0 0 0.5rem 0.5rem;
    background: var(--_blank);
  }

  .glass svg {
    position: absolute;
    inset: 0;
    inline-size: 100%;
    block-size: 100%;
    fill: color-mix(in oklab, var(--_rain) 35%, var(--_blank));
  }

  .glass input {
    position: relative;
    box-sizing: border-box;
    inline-size: 100%;
    block-size: 100%;
    padding: 0 0 1.4rem;
    border: 0;
    background: none;
    color: var(--_ink);
    font: 650 max(1rem, 16px) / 1 var(--_font);
    text-align: center;
  }

  .refused {
    color: var(--_short);
    font-size: var(--_size-small);
  }

  .refused[hidden] {
    display: none;
  }

  .end {
    display: flex;
    justify-content: space-between;
    align-items: baseline;
  }

  .total,
  .total label,
  .reading {
    display: flex;
    flex-wrap: wrap;
    gap: 0.35rem 0.6rem;
    align-items: center;
  }

  .entry {
    display: inline-flex;
    flex-wrap: wrap;
    gap: 0.3rem;
    align-items: center;
    min-inline-size: 0;
  }

  .entry input {
    inline-size: 5rem;
    min-block-size: 2.75rem;
    padding-inline: 0.4rem;
    ${unsafeCSS(textField)}
    text-align: end;
  }

  .reading .entry input {
    inline-size: 8rem;
  }

  :is(.entry, .glass) input[aria-invalid='true'] {
    border-color: var(--_short);
    color: var(--_short);
  }

  .entry .refused {
    flex-basis: 100%;
    max-inline-size: 18rem;
  }

  .total .remark {
    flex-basis: 100%;
    margin: 0;
    font-size: 0.85rem;
  }

  select {
    min-block-size: 2.75rem;
  }

  .forecast {
    margin-block-start: 0.5rem;
  }

  .forecast table {
    inline-size: auto;
  }

  .forecast :is(th, td) {
    padding: 0.15rem 0.75rem 0.15rem 0;
    border: 0;
    font-weight: 400;
    text-align: start;
  }

  .weather summary {
    color: var(--_ink);
  }

  @container runnel-week (max-width: 19rem) {
    .forecast :is(table, thead, tbody) {
      display: block;
    }

    .forecast tr {
      display: grid;
      grid-template-columns: repeat(2, minmax(0, 1fr));
    }

    .forecast th:first-child {
      grid-column: 1 / -1;
    }

    .forecast .entry input {
      box-sizing: border-box;
      inline-size: 100%;
    }
  }
`;
