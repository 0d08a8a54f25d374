/** Wörter in den Tabellen des Bundierplans. */
import type * as english from '../../en/fretwork/plan-tables.ts';

export const TABLE_WORDS: typeof english.TABLE_WORDS = {
  columns: {
    slotEnds: 'Schlitzenden',
    metal: 'Legierung',
    chosen: 'Gewählt',
    nickel: 'Nickel',
    figures: 'Werte',
    strength: 'Gespielt',
    severity: 'Stufe',
    code: 'Prüfung',
    variant: 'Art',
    parameter: 'Größe',
    quantity: 'Messgröße',
    value: 'Befund',
    limitKind: 'Art der Grenze',
    limit: 'Grenze',
    unit: 'Einheit',
    source: 'Quelle',
  },
  cells: {
    soft: 'leise',
    medium: 'mittel',
    hard: 'kräftig',
    own: 'wie ich',
    flat: 'flach',
    straight: 'gerade',
    spare: 'Ersatz',
    open: 'offen',
    stopped: 'abgesetzt',
    yes: 'ja',
    no: '',
    free: 'nickelfrei',
    contains: 'enthalten',
  },
};
