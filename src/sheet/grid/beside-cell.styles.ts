import { visuallyHidden } from '../../look/visually-hidden.ts';

/** What stands beside a cell: a callout, the note of a week; and announcements, which are not seen. */
export const besideCellStyles = `
.runnel-sheet .runnel-callout {
  position: absolute;
  z-index: 1100;
  box-sizing: border-box;
  inline-size: max-content;
  max-inline-size: min(22rem, calc(100vw - 12px));
  padding: 0.5em 0.7em;
  border: 1px solid var(--_short);
  border-inline-start-width: 4px;
  border-radius: 3px;
  background: var(--_paper);
  color: var(--_ink);
  font-size: 0.93em;
  line-height: 1.4;
}

.runnel-sheet .runnel-hint {
  position: absolute;
  z-index: 1100;
  box-sizing: border-box;
  inline-size: max-content;
  max-inline-size: min(22rem, calc(100vw - 12px));
  padding: 0.3em 0.6em;
  border-radius: 3px;
  background: var(--_ink);
  color: var(--_paper);
  font-size: 0.87em;
  line-height: 1.4;
  pointer-events: none;
}

.runnel-sheet .runnel-hint[hidden] {
  display: none;
}

.runnel-sheet .runnel-callout[hidden] {
  display: none;
}

.runnel-sheet .runnel-callout p {
  margin: 0;
}

.runnel-sheet .runnel-callout p + p {
  margin-block-start: 0.35em;
}

.runnel-sheet .runnel-note {
  position: absolute;
  z-index: 1100;
  box-sizing: border-box;
  inline-size: min(20rem, calc(100vw - 12px));
  padding: 0.7em;
  border: 1px solid var(--_quiet);
  border-radius: 4px;
  background: var(--_paper);
  color: var(--_ink);
  font-family: var(--_font);
}

.runnel-sheet .runnel-note label {
  display: block;
  font-size: 0.93em;
}

.runnel-sheet .runnel-note textarea {
  display: block;
  box-sizing: border-box;
  inline-size: 100%;
  margin-block: 0.35em 0.6em;
  border: 1px solid var(--_quiet);
  border-radius: 3px;
  background: var(--_paper);
  color: var(--_ink);
  font: inherit;
  resize: vertical;
}

.runnel-sheet .runnel-note button {
  min-block-size: 2.2em;
  margin-inline-end: 0.5em;
  padding-inline: 0.8em;
  border: 1px solid var(--_quiet);
  border-radius: 0.4em;
  background: var(--_paper);
  color: var(--_ink);
  font: inherit;
  cursor: pointer;
}

.runnel-sheet .runnel-note :focus-visible {
  outline: 2px solid var(--_ink);
  outline-offset: 1px;
}

.runnel-sheet .runnel-announcement {${visuallyHidden}}
`;
