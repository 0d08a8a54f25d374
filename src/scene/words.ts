/** Every word that is written into the picture. Another language gives its own table of the same shape. */
export const SCENE_WORDS = {
  bowShown: (factor: string) => `bow shown ×${factor}`,
  trueScale: 'true scale',
  gap: 'gap',
  board: 'board',
  noWebGl: 'This browser offers no WebGL, so the neck cannot be drawn.',
  contextLost: 'The graphics of this device were interrupted; the picture comes back by itself.',
};

export type SceneWords = typeof SCENE_WORDS;
