/** Daten des Entwurfs: Hölzer, Legierungen, Leime, Saiten, Hälse zum Beginnen; dazu seine Größen. */
import type { Sentences } from '../../catalogue.ts';
import { HINT_SENTENCES } from './data-hints.ts';
import { PARAMETER_SENTENCES } from './data-parameters.ts';

export const DATA_SENTENCES: Sentences = {
  ...PARAMETER_SENTENCES,
  ...HINT_SENTENCES,

  // Hölzer
  'sugar maple': 'Zuckerahorn',
  'red maple': 'Rotahorn',
  'bigleaf maple': 'Oregon-Ahorn',
  'black walnut': 'Amerikanischer Nussbaum',
  'black cherry': 'Amerikanischer Kirschbaum',
  'white ash': 'Weißesche',
  'yellow-poplar': 'Tulpenbaum',
  'yellow birch': 'Gelbbirke',
  'white oak': 'Weißeiche',
  'black locust': 'Robinie',
  mahogany: 'Mahagoni',
  'African mahogany': 'Khaya',
  'Spanish-cedar': 'Cedro',
  sapele: 'Sapelli',
  'Indian rosewood': 'Ostindischer Palisander',
  bubinga: 'Bubinga',
  ovangkol: 'Ovangkol',
  purpleheart: 'Amarant',
  'goncalo alves': 'Gonçalo Alves',
  ipe: 'Ipé',
  macawood: 'Macacauba',
  'ebony (African)': 'Afrikanisches Ebenholz',
  'African padauk': 'Padouk',
  wenge: 'Wenge',
  'my own wood': 'eigenes Holz',
  'Table 5-1 gives no G_LT: red oak’s ratio is used.':
    'Tabelle 5-1 nennt kein G_LT: Das Verhältnis der Roteiche ist eingesetzt.',
  'A second data set in the same sheet gives crushing 64.5 MPa.':
    'Ein zweiter Datensatz im selben Blatt nennt eine Quetschfestigkeit von 64,5 MPa.',
  'A second data set gives MOE 12 070 MPa and crushing 53.8 MPa; the printed specific gravity ranges over 0.55–0.67.':
    'Ein zweiter Datensatz nennt einen E-Modul von 12 070 MPa und eine Quetschfestigkeit von 53,8 MPa; die gedruckte Dichtezahl reicht von 0,55 bis 0,67.',

  // Drahtlegierungen; was in Klammern steht, fällt an manchen Stellen weg
  'nickel silver (CuNi18Zn20, hard)': 'Neusilber (CuNi18Zn20, hart)',
  'nickel silver (C77000, H04)': 'Neusilber (C77000, H04)',
  'phosphor bronze (C51000, H04)': 'Phosphorbronze (C51000, H04)',
  'copper–tin–iron, nickel-free (CuSn15 type)': 'Kupfer-Zinn-Eisen, nickelfrei (Typ CuSn15)',
  'brass (C26000, H04)': 'Messing (C26000, H04)',
  'stainless steel (304, half hard)': 'Edelstahl (304, halbhart)',
  'mild steel (1010, cold drawn)': 'Weicher Stahl (1010, kaltgezogen)',
  'Copper Development Association alloy data (C75200)': 'Legierungsdaten der Copper Development Association (C75200)',
  'Copper Development Association alloy data': 'Legierungsdaten der Copper Development Association',
  'MakeItFrom material data': 'Werkstoffdaten von MakeItFrom',
  'common practice, no source; yield taken from phosphor bronze':
    'Werkstattbrauch, ohne Quelle; Streckgrenze von Phosphorbronze übernommen',
  'ASTM A666': 'ASTM A666',
  'SAE J1397': 'SAE J1397',

  // Leime. Wie der Bund herauskommt, steht auch klein geschrieben mitten im Satz.
  'wood glue (PVA or aliphatic resin)': 'Holzleim (PVA oder Aliphatharz)',
  'hot hide glue': 'Hautleim, heiß',
  cyanoacrylate: 'Sekundenkleber (Cyanacrylat)',
  epoxy: 'Epoxidharz',
  'Wipe off with a damp cloth while wet. Water swells the slot: use little, and let the board dry.':
    'Nass mit einem feuchten Tuch abwischen. Wasser lässt den Schlitz quellen: wenig nehmen und das Griffbrett trocknen lassen.',
  'Warm damp cloth.': 'Warmes feuchtes Tuch.',
  'Wax or shellac the board beside the slot first; what has set is scraped off.':
    'Vorher das Griffbrett neben dem Schlitz wachsen oder mit Schellack streichen; Gehärtetes wird mit der Ziehklinge abgezogen.',
  'Alcohol on a cloth before it sets. Wax the board beside the slot.':
    'Alkohol auf einem Tuch, bevor es härtet. Das Griffbrett neben dem Schlitz wachsen.',
  'Heat the fret with an iron until the glue softens, then lift.':
    'Mit einem Lötkolben den Bund erwärmen, bis der Leim weich wird, dann heben.',
  'Heat with a little moisture, then lift.': 'Mit etwas Feuchtigkeit erwärmen, dann heben.',
  'Heat the fret with an iron; it softens at a higher heat than wood glue, so chips are likelier.':
    'Mit einem Lötkolben den Bund erwärmen; der Kleber wird erst bei größerer Hitze weich als Holzleim, darum bricht leichter etwas aus.',
  'Heat the fret with an iron until the resin softens, then lift slowly.':
    'Mit einem Lötkolben den Bund erwärmen, bis das Harz weich wird, dann langsam heben.',
  'Its water swells the wood around the slot for a day: do not level before it has dried out.':
    'Sein Wasser lässt das Holz um den Schlitz einen Tag lang quellen: nicht abrichten, bevor es ausgetrocknet ist.',
  'Warm the board and the wire; a cold slot gels the glue before the fret is home. Hot water scalds.':
    'Griffbrett und Draht anwärmen; in einem kalten Schlitz geliert der Leim, bevor der Bund unten ist. Heißes Wasser verbrüht.',
  'Bonds skin and eyelids within seconds, its vapour stings: gloves, glasses, fresh air. Cotton with it can heat up and smoke.':
    'Klebt Haut und Augenlider in Sekunden zusammen, sein Dampf beißt: Handschuhe, Schutzbrille, frische Luft. Getränkte Baumwolle kann heiß werden und rauchen.',
  'Uncured resin and hardener sensitise the skin for life: gloves, no bare hands, and do not wash it off with solvent.':
    'Ungehärtetes Harz und Härter können die Haut auf Lebenszeit überempfindlich machen: Handschuhe, nie mit bloßen Händen, und nicht mit Lösemittel abwaschen.',

  // Saitensätze und Stimmungen; das deutsche H heißt auf Englisch B
  'six, 9–42': 'sechs, 9–42',
  'six, 10–46': 'sechs, 10–46',
  'six, 11–49': 'sechs, 11–49',
  'six, bronze 12–53': 'sechs, Bronze 12–53',
  'seven, 10–59': 'sieben, 10–59',
  'six nylon, 28–43': 'sechs aus Nylon, 28–43',
  'four, 45–105': 'vier, 45–105',
  'five, 45–130': 'fünf, 45–130',
  'E A D G B E': 'E A D G H E',
  'D A D G B E': 'D A D G H E',
  'B E A D G B E': 'H E A D G H E',
  'a half step down': 'einen Halbton tiefer',
  'a whole step down': 'einen Ganzton tiefer',
  'low E A D G': 'E A D G, tief',
  'low D A D G': 'D A D G, tief',
  'low B E A D G': 'H E A D G, tief',

  // Hälse zum Beginnen, aus einer erfundenen Werkstatt
  'Bolt-on six, hard maple': 'Geschraubter Sechssaiter, Ahorn',
  'One piece of hard maple, rosewood board, 22 frets pressed in; a two-way rod.':
    'Ein Stück Zuckerahorn, Griffbrett aus Palisander, 22 Bünde eingepresst; ein zweiseitiger Spannstab.',
  'Set-neck six, mahogany, bound ebony': 'Eingeleimter Sechssaiter, Mahagoni, eingefasstes Ebenholz',
  'Slim-waisted mahogany with a bound, conical ebony board; pressed and glued.':
    'Schlankes Mahagoni mit eingefasstem, konischem Griffbrett aus Ebenholz; gepresst und geleimt.',
  'Thick five-piece, dense woods': 'Dicker Fünfstreifer, dichte Hölzer',
  'Wenge, purpleheart and wenge, over an inch thick, ebony board: stiff and slow to move.':
    'Wenge, Amarant und Wenge, mehr als 25 mm dick, Griffbrett aus Ebenholz: steif und langsam in Bewegung.',
  'Slim six, soft board': 'Schlanker Sechssaiter, weiches Griffbrett',
  'A thin mahogany neck with a board of black walnut: easy to bow, easy to bite.':
    'Ein dünner Mahagonihals mit einem Griffbrett aus amerikanischem Nussbaum: leicht zu biegen, und die Noppen dringen leicht ein.',
  'Long-scale four-string': 'Viersaiter mit langer Mensur',
  'An 864 mm scale, maple and walnut laminates, stiff bars beside the rod.':
    'Mensur 864 mm, Streifen aus Ahorn und Nussbaum, Versteifungsstäbe neben dem Spannstab.',
  'Wide nylon-string, flat board': 'Breiter Nylonsaiter, flaches Griffbrett',
  'Spanish-cedar neck, flat ebony board 52 mm at the nut, 19 frets glued in.':
    'Hals aus Cedro, flaches Griffbrett aus Ebenholz, 52 mm am Sattel, 19 Bünde eingeleimt.',
};
