/** The states of a neck whose bands a strip narrows. */
export const BAND_STATES = ['fretted', 'strung', 'settled'] as const;
