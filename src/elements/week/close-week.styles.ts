import { css, unsafeCSS } from 'lit';
import { textField } from '../../look/text-field.ts';

/** The foot with the one sentence and the button stays in sight. */
export const closeWeekStyles = css`
  .closing {
    max-inline-size: 36rem;
  }

  @container runnel-week (min-width: 56rem) {
    .closing {
      display: grid;
      grid-template-columns: minmax(0, 26rem) minmax(0, 36rem);
      grid-template-rows: auto auto auto auto 1fr auto;
      gap: 0 3.5rem;
      max-inline-size: 66rem;
    }

    .closing > :is(.head, .foot) {
      grid-column: 1 / -1;
    }

    .closing > section {
      grid-column: 1;
    }

    .closing > .ran {
      grid-column: 2;
      grid-row: 2 / span 4;
    }
  }

  .closing > .head {
    align-items: start;
  }

  .edit-zone {
    display: flex;
    flex-wrap: wrap;
    gap: 0.6rem 1rem;
    align-items: center;
    justify-content: space-between;
    margin-block-end: 0.5rem;
    padding: 0.6rem;
    border-radius: 0.55rem;
    background: color-mix(in oklab, var(--_ink) 8%, var(--_paper));
  }

  .segments {
    display: inline-flex;
    flex-wrap: wrap;
  }

  .segments button {
    min-inline-size: 2.75rem;
    margin-inline-start: -1px;
    padding-inline: 0.4rem;
    border-radius: 0;
    font-weight: 400;
  }

  .segments button[aria-pressed='true'] {
    background: var(--_ink);
    color: var(--_paper);
    font-weight: 650;
  }

  .stepper {
    display: inline-flex;
    gap: 0.35rem;
    align-items: center;
  }

  .stepper > button {
    inline-size: 2.75rem;
    padding: 0;
    font-size: 1.3rem;
    font-weight: 400;
  }

  .stepper .entry input {
    inline-size: 4rem;
  }

  .turn {
    display: flex;
    flex: 1 1 100%;
    gap: 1rem;
    align-items: center;
    justify-content: space-between;
  }

  .station:has(+ * > .zone-name) {
    align-self: center;
  }

  .zone-name {
    min-block-size: 2.5rem;
    padding: 0;
    border: 0;
    background: none;
    font: inherit;
    text-align: start;
    overflow-wrap: anywhere;
  }

  textarea {
    box-sizing: border-box;
    inline-size: 100%;
    min-block-size: 3rem;
    margin-block-start: 0.35rem;
    padding: 0.5rem 0.75rem;
    ${unsafeCSS(textField)}
  }

  ::placeholder {
    color: var(--_quiet);
    opacity: 1;
  }

  .foot {
    position: sticky;
    z-index: 1;
    inset-block-end: var(--_foot, 0);
    margin-block-start: 1.25rem;
    padding-block: 0.6rem;
    border-block-start: 1px solid var(--_line);
    background: var(--_paper);
  }

  .foot [role='status'] {
    font-weight: 600;
  }
`;
