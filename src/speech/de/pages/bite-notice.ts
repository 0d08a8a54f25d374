/** Dass die Spanne nicht enger ist, obwohl sich der Entwurf auf Messungen bezieht: eine Zeile neben den großen Zahlen. */
import type * as english from '../../en/pages/bite-notice.ts';

export const BITE_NOTICE_WORDS: typeof english.BITE_NOTICE_WORDS = {
  short: {
    earlier:
      'Den Griff hat eine frühere Fassung aus dem Protokoll genommen; gezeigt wird die breite Spanne, bis Sie das Protokoll neu übernehmen.',
    'not-accepted':
      'Die Messungen hinter diesem Griff stehen im Protokoll und sind noch nicht angenommen; gezeigt wird die breite Spanne.',
    'not-here': 'Die Messungen hinter diesem Griff sind nicht auf diesem Gerät; gezeigt wird die breite Spanne.',
    changed: 'Die Messung hinter dieser Spanne hat sich geändert; gezeigt wird die breite Spanne.',
  },
  gripShort: {
    'other-grip': 'Der Griff wurde von Hand geändert, seit er gemessen ist; gezeigt wird die breite Spanne.',
    'not-accepted':
      'Die Messungen hinter diesem Griff sind hier und noch nicht angenommen; gezeigt wird die breite Spanne.',
    'not-here': 'Die Messungen hinter diesem Griff sind nicht auf diesem Gerät; gezeigt wird die breite Spanne.',
    changed:
      'Ein Streifen oder eine Messung hinter dieser Spanne ist geändert oder gelöscht; gezeigt wird die breite Spanne.',
    'other-neck':
      'Der Hals wurde geändert, seit an ihm gemessen wurde; seine eigenen Messungen machen jetzt nichts enger.',
  },
};
