import { css } from 'lit';

export const nextYearStyles = css`
  .next-year {
    margin-block-start: 1rem;
  }

  .next-year [maxlength] {
    inline-size: 17rem;
    max-inline-size: 100%;
  }

  .next-year h4 {
    margin: 0.75rem 0 0;
  }

  .fates {
    display: grid;
    grid-template-columns: repeat(auto-fill, minmax(min(100%, 18rem), 1fr));
    gap: 0.75rem 2rem;
  }

  .fates fieldset {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    align-content: start;
    margin: 0;
  }

  .fates legend {
    font-weight: 600;
    overflow-wrap: anywhere;
  }

  .fates label {
    display: grid;
    grid-template-columns: minmax(0, 1fr) minmax(0, 9rem);
    gap: 0.5rem;
    align-items: center;
    overflow-wrap: anywhere;
  }

  .learned {
    display: grid;
    gap: 0.75rem;
    padding: 0;
    list-style: none;
  }

  .learned li > :is(.quiet, .check) {
    display: flex;
  }
`;
