/** The box of a field that is typed into. */
export const textField = `
  border: 1px solid var(--_quiet);
  border-radius: 0.4rem;
  background: var(--_blank);
  color: var(--_ink);
  font: inherit;
`;
