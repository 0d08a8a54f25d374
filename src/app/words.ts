/** Words of the shell. */
export const APP_WORDS = {
  skip: 'Go to the controls',
  loading: 'The controls are being prepared.',
} as const;
