import { css, unsafeCSS } from 'lit';
import { visuallyHidden } from '../../look/visually-hidden.ts';

/**
 * The timer's zones and days, the rows of what grows, the lines, and what it comes to; then how all of it stands on narrow screens.
 *
 * The room of a chip's `small` stays: what is typed before the chip is pressed must not move it away. On a phone the longest name of a
 * step has no room: the step's own title says it.
 */
export const laterStepsStyles = css`
  .stepper {
    display: flex;
    gap: 0.5rem;
    align-items: center;
  }

  .stepper button {
    min-inline-size: 2.5rem;
    font-size: 1.2rem;
  }

  .stepper output {
    min-inline-size: 2ch;
    font-size: var(--_size-large);
    text-align: center;
  }

  .days {
    display: flex;
    flex-wrap: wrap;
    gap: 0.4rem;
    align-items: center;
    margin-block: 0.6rem;
  }

  .days > .label {
    inline-size: 100%;
  }

  .day {
    position: relative;
    cursor: pointer;
  }

  .day input {
    position: absolute;
    inset: 0;
    margin: 0;
    opacity: 0;
  }

  .day span {
    display: grid;
    place-items: center;
    min-inline-size: 3.4rem;
    min-block-size: 2.2rem;
    border: 1px solid var(--_quiet);
    border-radius: 0.4rem;
  }

  .day :checked + span {
    border-color: var(--_ink);
    background: var(--_ink);
    color: var(--_paper);
    font-weight: 650;
  }

  .is-assumed .day :checked + span {
    border: 1.5px dashed var(--_ink);
    background: none;
    color: var(--_ink);
  }

  .day :focus-visible + span {
    outline: 2px solid var(--_ink);
    outline-offset: 2px;
  }

  .rows li {
    display: flex;
    flex-wrap: wrap;
    gap: 0.2rem 1rem;
    align-items: baseline;
    padding-block: 0.4rem;
    border-block-start: 1px solid var(--_line);
  }

  .rows b {
    min-inline-size: 8rem;
  }

  .does {
    display: flex;
    flex-wrap: wrap;
    gap: 0 0.9rem;
    margin-inline-start: auto;
  }

  .typing {
    display: grid;
    grid-template-columns: 1fr 1.4fr 1.2fr 0.8fr auto auto;
    gap: 0.5rem 0.75rem;
    align-items: start;
    margin-block-start: 0.75rem;
    padding-block-start: 0.75rem;
    border-block-start: 2px solid var(--_ink);
  }

  .typing .actions {
    align-self: start;
    margin-block-start: 1.55rem;
  }

  .main {
    border-color: var(--_ink);
    background: var(--_ink);
    color: var(--_paper);
    font-weight: 650;
  }

  .main:not(:disabled):hover {
    background: color-mix(in oklab, var(--_ink) 85%, var(--_paper));
  }

  .chip[aria-pressed='true']:not(:disabled):hover {
    background: var(--_ink);
  }

  .wide select {
    max-inline-size: 14rem;
  }

  .wide > .field {
    margin-block: 0.5rem;
  }

  .chips {
    display: flex;
    flex-wrap: wrap;
    gap: 0.4rem;
    align-items: center;
    margin-block: 0.6rem;
  }

  .chip {
    border-radius: 1rem;
  }

  .chip:not(.is-assumed) small {
    visibility: hidden;
  }

  .chip.is-assumed {
    border-style: dashed;
  }

  .chip[aria-pressed='true'] {
    border-color: var(--_ink);
    background: var(--_ink);
    color: var(--_paper);
  }

  .fold {
    margin-block-start: 1rem;
    border-block: 1px solid var(--_line);
  }

  @container (max-width: 860px) {
    .columns,
    .two,
    .typing {
      grid-template-columns: minmax(0, 1fr);
    }

    .day {
      flex: 1 1 0;
    }

    .day span {
      min-inline-size: 0;
    }

    .typing .actions {
      margin-block-start: 0;
    }

    .beside {
      display: contents;
    }

    .known {
      order: -1;
      padding-block-end: 0.5rem;
      border-block-end: 1px solid var(--_line);
    }

    .step .fields {
      grid-template-columns: repeat(auto-fill, minmax(min(100%, 8.5rem), 1fr));
    }

    .card-row {
      grid-template-columns: repeat(auto-fit, minmax(6.6rem, 1fr));
    }

    .progress small,
    .progress button:not([aria-current]) b {
      ${unsafeCSS(visuallyHidden)}
    }

    .progress ol {
      grid-template-columns: repeat(5, auto);
    }
  }

  @container (max-width: 480px) {
    .progress b,
    .foot > .quiet {
      ${unsafeCSS(visuallyHidden)}
    }

    .foot {
      gap: 0.4rem 0.6rem;
    }
  }

  @media (pointer: coarse) {
    .step input:not([type='radio'], [type='checkbox']),
    .step select,
    .day span,
    .chip,
    .foot button,
    .does button {
      min-block-size: 2.75rem;
    }

    .step input:not([type='radio'], [type='checkbox']) {
      font-size: max(1rem, 16px);
    }
  }

  @media print {
    .progress,
    .foot {
      display: none;
    }
  }
`;
