import { css } from 'lit';

/**
 * A row a zone. A box is the same everywhere: empty to run, checked done, a figure for minutes really run, struck through where a run
 * is skipped.
 */
export const weekTableStyles = css`
  .box {
    position: relative;
    display: inline-grid;
    place-items: center;
    box-sizing: border-box;
    inline-size: 1.35rem;
    aspect-ratio: 1;
    border: 1.5px solid transparent;
    border-radius: 0.3rem;
    color: var(--_ink);
    font-size: 0.75rem;
    font-weight: 650;
    line-height: 1;
  }

  /* Forced colours draw what is transparent. */
  .box.none {
    visibility: hidden;
  }

  .box.to-run {
    border-color: var(--_ink);
    background: var(--_blank);
  }

  .box.changed {
    inline-size: auto;
    min-inline-size: 1.35rem;
    block-size: 1.35rem;
    padding-inline: 0.1rem;
    aspect-ratio: auto;
    border-color: var(--_ink);
    background: var(--_blank);
  }

  .tick .box.changed {
    inline-size: 2.5rem;
    block-size: 2.5rem;
  }

  .box.done {
    border-color: var(--_growth);
    background: var(--_blank);
  }

  .tick .box:is(.done, .changed) {
    border-color: var(--_growth);
    background: var(--_growth);
  }

  .box.done::before,
  .tick .box.changed::before {
    content: '';
    inline-size: 60%;
    block-size: 32%;
    border: solid var(--_growth);
    border-width: 0 0 0.14em 0.14em;
    font-size: 1rem;
    transform: translateY(-15%) rotate(-45deg);
  }

  .tick .box::before {
    border-color: var(--_blank) !important;
    font-size: 1.6rem !important;
  }

  .box.skipped {
    border-color: var(--_quiet);
  }

  .box.skipped::before {
    content: '';
    position: absolute;
    inline-size: 125%;
    border-block-start: 1.5px solid var(--_quiet);
    transform: rotate(-45deg);
  }

  .row {
    display: grid;
    grid-template-columns: minmax(0, 1fr) repeat(7, 1.85rem);
    border-block-start: 1px solid var(--_line);
  }

  .row.heads {
    border: 0;
  }

  .heads .day {
    padding-block: 0.15rem;
    color: var(--_quiet);
    font-size: var(--_size-small);
    line-height: 1.25;
    text-align: center;
  }

  .day {
    display: grid;
    place-items: center;
    min-block-size: 2.75rem;
  }

  .heads .day {
    min-block-size: 0;
  }

  .day.now {
    background: color-mix(in oklab, var(--_ink) 8%, transparent);
    color: var(--_ink);
    font-weight: 700;
  }

  .row .name {
    display: grid;
    grid-template-columns: 1.25rem minmax(0, 1fr);
    align-items: center;
    min-inline-size: 0;
    padding-block: 0.4rem;
    overflow-wrap: anywhere;
  }

  .row .line {
    display: block;
    font-size: var(--_size-small);
    line-height: 1.35;
  }

  .row .note {
    padding-inline-start: 0.5rem;
    border-inline-start: 2px solid var(--_line);
  }

  .short {
    color: var(--_short);
  }

  button.cell {
    display: grid;
    place-items: center;
    inline-size: 100%;
    min-block-size: 2.75rem;
    padding: 0;
    border: 0;
    background: none;
  }

  .key {
    display: flex;
    flex-wrap: wrap;
    gap: 0.3rem 1rem;
    align-items: center;
    padding-block: 0.5rem;
    border-block-start: 1px solid var(--_line);
  }

  .key > span {
    display: inline-flex;
    gap: 0.35rem;
    align-items: center;
  }

  @container runnel-week (max-width: 19rem) {
    .row {
      grid-template-columns: repeat(7, minmax(0, 1fr));
    }

    .row .name {
      grid-column: 1 / -1;
    }
  }
`;
