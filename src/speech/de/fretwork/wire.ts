/** Falsche Radien, und was man von Bunddraht weiß. */
import type * as english from '../../en/fretwork/wire.ts';

export const WRONG_RADIUS_TEXTS: typeof english.WRONG_RADIUS_TEXTS = {
  flatter: {
    when: 'Der Bunddraht ist flacher als das Griffbrett.',
    happens:
      'Die Mitte sitzt, und die Enden stehen auf. Niedergedrückt federn sie wieder hoch, gleich oder nach dem ersten Jahr, und beim Spielen spürt man sie an den Kanten.',
    remedy: 'Enger biegen, auf weniger als den Radius des Griffbretts, damit sich die Enden zuerst setzen.',
  },
  tighter: {
    when: 'Der Bunddraht ist viel enger gebogen als das Griffbrett.',
    happens:
      'Die Enden sitzen, und die Mitte steht auf. Die Mitte flach zu schlagen streckt den Draht: Die Enden wandern nach außen, der Bundfuß reißt den Schlitz auf, und der Bundkopf knickt.',
    remedy: 'Aufbiegen, bis die Mitte nur noch um wenige Zehntel absteht.',
  },
  straight: {
    when: 'Bunddraht von der Rolle kommt, wie er ist, auf ein flaches Griffbrett.',
    happens: 'Die Mitte beult sich unter jedem Schlag auf, und die Enden graben sich in die Kanten des Griffbretts.',
    remedy: 'Die Rolle erst aufbiegen, über gerade hinaus, und zurückfedern lassen.',
  },
  twisted: {
    when: 'Der Bunddraht ist aus der Ebene des Bundfußes heraus gebogen.',
    happens:
      'Der Bund lehnt schief im Schlitz, eine Schulter des Bundkopfs steht ab, und der Sägeschnitt wird aufgehebelt.',
    remedy: 'Den Bundfuß beim Biegen in einer Nut führen; an jedem Stück entlangsehen.',
  },
};

export const METAL_FACT_TEXTS: typeof english.METAL_FACT_TEXTS = {
  'nickel-limit': (limit, pierced) =>
    `Der europäische Grenzwert gilt für die Abgabe: Was dazu bestimmt ist, unmittelbar und länger mit der Haut in Berührung zu kommen, darf nicht mehr als ${limit} µg Nickel je cm² und Woche abgeben (${pierced} bei Stäben in durchstochener Haut), gemessen in künstlichem Schweiß nach EN 1811.`,
  'nickel-limit-is-not':
    'Er begrenzt nicht, wie viel Nickel eine Legierung enthält; er verspricht nicht, dass niemand mehr reagiert, der schon überempfindlich ist; und unter seinen Beispielen (Ohrringe, Uhrgehäuse, Knöpfe …) sind keine Bünde. Ob das Greifen auf Bünden als längere Berührung zählt, haben die Behörden zu sagen.',
  'nickel-copper-alloys':
    'Kupfer-Nickel-Legierungen geben in der Prüfung weit mehr ab: gebrauchte Münzen aus CuNi25 etwa 30 µg/cm² in einer Woche in künstlichem Schweiß. Für Bunddraht aus Neusilber fand sich keine Zahl; gehen Sie davon aus, dass er Nickel abgibt.',
  'nickel-stainless': (least, most) =>
    `Nichtrostender Stahl 304 enthält etwa 8 bis 10 % Nickel und gibt kaum etwas ab: unter ${least} bis ${most} µg/cm² in einer Woche. Automatenstähle mit Schwefel (303) liegen über dem Grenzwert. Wer auf Nickel reagiert, sollte trotzdem ärztlichen Rat holen.`,
  'strings-too':
    'Nickelfreie Bünde helfen wenig unter Saiten, die mit vernickeltem Draht oder Nickeldraht umsponnen sind: Nach beidem fragen.',
  wear: 'Was sich abnutzt, wächst mit Last und Gleitweg und sinkt mit der Härte; doppelt so hart hält unter den gleichen Saiten also etwa doppelt so lange. Die Härten sind übliche Werte: Das Verhältnis zeigt eine Richtung, kein Datum.',
  'hard-wire-tools':
    'Härterer Draht kostet Zangen, Feilen und Zeit: gehärtete Schneiden, und etwa doppelt so lange zum Abrichten und Verrunden.',
  bending:
    'Wie weit Draht zurückfedert, hängt von der Streckgrenze im Verhältnis zur Steifigkeit und von seiner Höhe ab, nicht von der Härte allein. Stangen einer Legierung sind verschieden hart gezogen: Eine biegen und ans Griffbrett halten.',
  force:
    'Wie stark ein gepresster Bund keilt, ändert die Legierung nicht: Das machen die Breite über die Noppen, der Steg des Bundfußes und die Schlitzbreite. Alle diese Metalle sind mindestens fünfmal so steif wie das Holz längs der Faser. Im geleimten Schlitz zählt die Steifigkeit des Bundfußes mit, aber der dünne Leim daneben entscheidet.',
};
