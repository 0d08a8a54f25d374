/** Fachwörter. Wo am Werktisch auch das englische Wort üblich ist, steht es dabei. */
import type * as english from '../../en/pages/glossary.ts';

export const GLOSSARY_WORDS: typeof english.GLOSSARY_WORDS = {
  title: 'Fachwörter',
  find: 'Ein Wort suchen',
  none: (text) => `Kein Wort mit „${text}“.`,
};

export const TERM_WORDS: typeof english.TERM_WORDS = {
  scale: {
    word: 'Mensur',
    also: 'Scale Length',
    means:
      'Länge der schwingenden Saite, vom Sattel bis zum Steg auf dem Korpus. Nach ihr richtet sich der Ort jedes Bundes, und mit der Stimmung bestimmt sie, wie stark die Saiten ziehen.',
  },
  board: {
    word: 'Griffbrett',
    means: 'Der Streifen aus hartem Holz oben auf dem Hals, der die Bünde trägt. In ihn wird jeder Schlitz gesägt.',
  },
  radius: {
    word: 'Griffbrettradius',
    also: 'Radius, Wölbung',
    means:
      'Radius des Bogens quer über das Griffbrett, unter den Saiten. Ein kleiner Radius ist stark gewölbt, ein flaches Griffbrett hat keinen.',
  },
  cone: {
    word: 'konisches Griffbrett',
    also: 'Compound Radius',
    means:
      'Ein Griffbrett, dessen Radius vom Sattel bis zum letzten Bund wächst, wie auf dem Mantel eines Kegels. Jeder Bund wird auf seinen eigenen Radius gebogen.',
  },
  profile: {
    word: 'Halsprofil',
    also: 'Halsform, Shaping',
    means: 'Form der Halsrückseite, wie die Hand sie spürt: vom V über die halbe Ellipse bis zum eckigen U.',
  },
  laminates: {
    word: 'Streifen',
    also: 'mehrstreifiger Hals, Laminat',
    means: 'Längs nebeneinander verleimte Streifen verschiedener Hölzer. Die steifsten Streifen tragen am meisten.',
  },
  'flat-sawn': {
    word: 'liegende Jahresringe',
    also: 'Fladerschnitt, Flat Sawn',
    means: 'So gesägt, dass die Jahresringe im Brett liegen.',
  },
  'quarter-sawn': {
    word: 'stehende Jahresringe',
    also: 'Riftschnitt, Quarter Sawn',
    means: 'So gesägt, dass die Jahresringe im Brett stehen.',
  },
  heel: {
    word: 'Halsfuß und Korpusansatz',
    also: 'Heel',
    means:
      'Wo der Hals dicker wird und am Korpus sitzt. Jenseits davon verkeilen die Bünde ihre Schlitze auch noch, biegen aber kaum etwas.',
  },
  fret: {
    word: 'Bund',
    also: 'Bundstäbchen',
    means:
      'Ein Stück gezogener Metalldraht, das in einem Schlitz des Griffbretts sitzt: oben der Bundkopf, unten der Bundfuß.',
  },
  crown: {
    word: 'Bundkopf',
    also: 'Bundkrone, Crown',
    means:
      'Der Teil des Bundes, den man sieht und den die Saite berührt. Seine Höhe wird beim Abrichten und beim Spielen verbraucht.',
  },
  tang: {
    word: 'Bundfuß',
    also: 'Tang',
    means:
      'Der dünne Steg unter dem Bundkopf, der im Schlitz sitzt. Wo dieser Steg selbst, ohne die Noppen, breiter ist als der Schlitz, keilt er hart.',
  },
  studs: {
    word: 'Noppen',
    also: 'Bundnoppen, Barbs',
    means:
      'Kleine Höcker auf beiden Seiten des Bundfußes. Eingepresst greifen sie in die Wände des Schlitzes und halten den Bund.',
  },
  slot: {
    word: 'Schlitz',
    also: 'Bundschlitz',
    means:
      'Der Sägeschnitt quer im Griffbrett, in dem der Bundfuß sitzt. Seine Wände sind Hirnholz. Ein Schlitz mit Luft darin ist ein Stück Balken, das fehlt.',
  },
  kerf: {
    word: 'Schlitzbreite',
    also: 'Kerf',
    means:
      'Breite des Sägeschnitts. Einige hundertstel Millimeter liegen zwischen einem Bund, der herausfällt, und einem Hals, der sich biegt.',
  },
  chamfer: {
    word: 'Fase',
    means:
      'Kleine Schräge an beiden Kanten des Schlitzes, verdeckt vom Bundkopf. An ihr findet der Bundfuß gerade hinein, und sie schont die Kanten, wenn der Bund eines Tages gezogen wird.',
  },
  'press-fit': {
    word: 'gepresst',
    also: 'Presssitz',
    means:
      'Eingesetzt allein mit Kraft: Der Schlitz ist schmaler als der Bundfuß über die Noppen, und die Noppen greifen. Jeder Bund keilt seinen Schlitz ein wenig auf.',
  },
  'glue-fit': {
    word: 'geleimt',
    means:
      'Mit Leim eingesetzt: Der Schlitz nimmt den Bundfuß ohne Kraft auf und wird gefüllt. Kein Keil, und ein steiferer Hals.',
  },
  binding: {
    word: 'Einfassung',
    also: 'Binding, Zierspäne',
    means:
      'Streifen aus Holz oder Kunststoff an der Kante des Griffbretts. Durch manche Lagen geht die Säge hindurch, vor anderen hält sie an.',
  },
  nip: {
    word: 'abzwicken',
    also: 'ausklinken',
    means:
      'Den Bundfuß unter dem Ende des Bundes wegschneiden, damit der Bundkopf über einer Einfassung liegen kann, die ganz bleibt.',
  },
  shelf: {
    word: 'Auflage',
    means: 'Die Einfassung, auf der das Ende des Bundkopfs aufliegt, ohne Bundfuß darunter.',
  },
  bevel: {
    word: 'Schräge der Bundenden',
    means: 'Neigung, auf die die Enden der Bünde gefeilt werden, damit die Hand nicht daran hängenbleibt.',
  },
  oversize: {
    word: 'Überstand',
    means: 'Draht, der über beide Kanten des Griffbretts hinaussteht, bis er bündig abgeschnitten und gefeilt ist.',
  },
  straightedge: {
    word: 'Lineal',
    also: 'Stahllineal, Haarlineal',
    means:
      'Ein genau gerader Stahl, auf die Bünde gelegt, vom ersten bis zur Kante des Korpus. Der Spalt darunter, oder dass er kippelt, zeigt die Biegung.',
  },
  relief: {
    word: 'Halskrümmung',
    also: 'Relief, Neck Relief',
    means: 'Eine Mulde der Bundoberkanten unter dem Lineal. Die Saiten brauchen ein wenig davon, um frei zu schwingen.',
  },
  'back-bow': {
    word: 'Rückbiegung',
    also: 'Backbow',
    means:
      'Ein Buckel: das Gegenteil der Halskrümmung. Die Saiten schnarren darauf, und ein einseitiger Spannstab kann ihn nicht wegnehmen.',
  },
  rod: {
    word: 'Spannstab',
    also: 'Halsstab, Truss Rod',
    means:
      'Ein Stab im Hals mit einer Mutter am Ende. Einseitig (Single Action) biegt er den Hals nur nach hinten, zweiseitig (Dual Action) nach beiden Richtungen.',
  },
  action: {
    word: 'Saitenlage',
    also: 'Saitenhöhe, Action',
    means:
      'Wie hoch die Saiten über dem Griffbrett oder über den Bünden liegen. In der Mitte des Halses ist die Halskrümmung ein Teil davon.',
  },
  levelling: {
    word: 'Abrichten',
    also: 'Planen der Bünde, Leveling',
    means:
      'Die Oberkanten der Bünde auf eine Linie feilen. Was die Feile nimmt, fehlt dem Bundkopf; danach wird er wieder verrundet.',
  },
  settling: {
    word: 'Setzen',
    means:
      'Was der Hals in den Wochen unter seinen Saiten macht: Das Holz kriecht nach vorn, und die Keile lassen einen Teil ihrer Kraft los.',
  },
};
