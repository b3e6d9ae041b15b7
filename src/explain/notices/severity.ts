/** How bad what a notice tells of is, worst first. */
export const SEVERITIES = ['danger', 'warning', 'note'] as const;

export type NoticeSeverity = (typeof SEVERITIES)[number];

/** The worse of two. */
export function atLeast(least: NoticeSeverity, severity: NoticeSeverity): NoticeSeverity {
  return SEVERITIES.indexOf(severity) < SEVERITIES.indexOf(least) ? severity : least;
}
