/** The page's colours that the picture needs too. The same values stand in style/tokens.css; a test holds them together. */
import type { ScenePalette } from '../scene/types.ts';

/** Warm paper by day. */
export const LIGHT: ScenePalette = { ground: '#f4efe4', ink: '#2a2620', accent: '#9a7326', dark: false };
/** Dark slate by night. */
export const DARK: ScenePalette = { ground: '#1f2429', ink: '#e8e4da', accent: '#d9ae5b', dark: true };
