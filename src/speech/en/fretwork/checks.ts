/** The checks in words, by code: what it is, what goes wrong, what to do. The numbers are added by speech/checks.ts. */
import type { CheckCode, CheckVariants, LimitCode, Severity } from '../../../fretwork/checks/check-types.ts';
import { words } from '../../language.ts';

export const CHECK_WORDS = words('CHECK_WORDS', {
  title: 'Checks',
  severities: { stop: 'Stop', warn: 'Caution', note: 'Note' } satisfies Record<Severity, string>,
  none: 'No problems found.',
  /** @param limits of the notes, how many say where this program is known to be off */
  more: (count: number, serious: number, limits: number) => {
    if (count === 0) return 'in full';
    const notes = count - serious - limits;
    const parts = [
      serious > 0 ? `${serious} more` : '',
      limits > 0 ? `${limits} known ${limits === 1 ? 'limit' : 'limits'}` : '',
      notes > 0 ? `${notes} ${notes === 1 ? 'note' : 'notes'}` : '',
    ];
    return parts.filter(Boolean).join(', ');
  },
  /** In place of the severity of a note that says where this program is known to be off. */
  limit: 'Known limit',
  /** What this program gives beside what makers see. */
  limits: {
    'limit-stiff-neck': (value: string, practice: string) =>
      `First day under strings: ${value} here; in practice below ${practice}, still a back-bow.`,
    'limit-pressed-settled': (value: string, practice: string) =>
      `Strung and settled: pressed ${value} here; in practice less than glued, which is ${practice}.`,
  } satisfies Record<LimitCode, (value: string, practice: string) => string>,
  /** What the body of the tang does to the bow. */
  bears: (withIt: string, without: string) =>
    `With the frets in the relief is ${withIt}; with the studs alone it would be ${without}.`,
  fewer: 'only the worst',
  numbers: (name: string, value: string, where: string, kind: 'least' | 'most', limit: string) => {
    const found = `${name} is ${value}${where === '' ? '' : ` ${where}`}`;
    return kind === 'least' ? `${found}; it needs ${limit}.` : `${found}; it may be ${limit} at most.`;
  },
  /** Where the name of a quantity does not read well before a number. */
  names: { restDays: 'Rest before stringing', wireRadiusPercent: 'Radius of the wire, of the board’s,' },
  fret: (fret: number) => `at fret ${fret}`,
  frets: (first: number, last: number, count: number) =>
    count === last - first + 1 ? `at frets ${first} to ${last}` : `at ${count} frets between ${first} and ${last}`,
  change: (label: string) => `to ${label}`,
  lists: { strings: 'the strings', binding: 'the binding lines' },
  source: (source: string) => `Source: ${source}.`,
});

type Reason<Code> = Code extends keyof CheckVariants
  ? Readonly<Record<CheckVariants[Code], string>>
  : string | ((...given: string[]) => string);

/** A code without words does not compile. */
type CheckTexts = {
  readonly [Code in CheckCode]: { readonly title: string; readonly reason: Reason<Code>; readonly remedy: string };
};

export const CHECK_TEXTS = words('CHECK_TEXTS', {
  'no-bite': {
    title: 'No bite',
    reason: 'The slot is as wide as the studs or wider: nothing bites, and the fret lifts again.',
    remedy: 'Saw a narrower kerf, take wire with wider studs, or seat as a glue fit.',
  },
  'weak-bite': {
    title: 'Weak bite',
    reason: 'The studs hardly reach into the walls; the ends will lift with the seasons.',
    remedy: 'Saw a narrower kerf, or glue as well.',
  },
  'too-tight': {
    title: 'Too tight',
    reason:
      'The studs bite too deep: the board bows more than it need, chips at the slots, and can split along the grain.',
    remedy: 'Saw a wider kerf, or take wire with narrower studs.',
  },
  'body-wedges': {
    title: 'The tang’s body wedges too',
    reason: {
      bears:
        'The kerf is a little narrower than the body of the tang, so the body wedges as well as the studs. Many who press want it so: the frets bow the neck further back, and the strings pull it flat.',
      bow: 'The kerf is narrower than the body of the tang, so the body wedges as well as the studs, and the neck stays further back than you want it.',
      split:
        'The kerf is narrower than the body of the tang. It wedges so hard that the wood beside a slot can shear off along the grain.',
      force:
        'The kerf is narrower than the body of the tang, and the frets take more force than your tool gives: they will not go home, or their crowns suffer.',
    },
    remedy: 'For less of it, saw the kerf nearer to the width of the tang’s body.',
  },
  'loose-glue-fit': {
    title: 'Loose glue fit',
    reason: 'The gap beside the tang is so wide that the glue has to be filler; it stays soft, or shrinks and lets go.',
    remedy: 'File the studs down, or take wire with narrower studs and saw a narrower slot.',
  },
  'soft-glue': {
    title: 'Soft glue fills without stiffening',
    reason:
      'This glue stays soft. It keeps the fret from rattling, but under the strings the neck gives as with empty slots, or nearly.',
    remedy: 'Nothing, if the bow is as you want it. For a stiffer neck take a glue that sets hard.',
  },
  'earlier-grip': {
    title: 'Computed with an earlier law of the grip',
    reason:
      'This neck comes from an earlier file, which took every stud for a block that grips in full at once. The kerf then hardly changes the bow.',
    remedy:
      'Look at a stud through a lens and enter its shape, and set the embedding length back to its standard. The bow changes with them.',
  },
  'earlier-woods': {
    title: 'Computed with earlier values of its wood',
    reason: (woods: string) =>
      `This neck comes from an earlier file. Its ${woods} had a density worked out from another figure, or a stiffness with a share for shear that its test does not have. It keeps those numbers, so that it still says what it said when you worked by it.`,
    remedy: 'For a new job set “Values of the woods” to “as printed”. Forces and bow change with it.',
  },
  'earlier-ends': {
    title: 'Its bound ends are computed anew',
    reason:
      'This neck comes from an earlier file, which took outer lines that stay whole as sawn through. It was then given about a tenth too much bow of its frets and a twentieth too much of its strings. Its numbers are smaller now.',
    remedy: 'Nothing to change. Untick “Ends computed anew” once you have seen it.',
  },
  'slot-too-shallow': {
    title: 'Slot too shallow',
    reason: 'The tang is deeper than the slot: it hits the floor and the crown stays up.',
    remedy: 'Saw deeper, or take wire with a shorter tang.',
  },
  'slot-shallow-at-edge': {
    title: 'Slot too shallow at the edges',
    reason:
      'The floor of the slot is straight and the board is round: towards the edges the slot is too shallow for the tang, and the ends stand up.',
    remedy:
      'Saw deeper at the centre, deepen the ends so that the floor follows the radius, or take wire with a shorter tang.',
  },
  'little-air': {
    title: 'Little air below the tang',
    reason: 'There is less air below the tang than you asked for: dust or filler in the slot lifts the fret.',
    remedy: 'Saw a little deeper, or clean the slots out to the last grain.',
  },
  'slot-deeper-than-needed': {
    title: 'Slot deeper than needed',
    reason: 'The slots are much deeper than the tang needs; depth that nothing fills only weakens the board.',
    remedy: 'Set the depth stop higher.',
  },
  'little-board-left': {
    title: 'Little board left below the slot',
    reason:
      'Too little of the board is left below the slot where it is thinnest: it bows like a hinge and can crack through.',
    remedy: 'Saw less deep, take a thicker board, or cut a flat floor where the edge is the thin place.',
  },
  'board-edge-thin': {
    title: 'Thin edge',
    reason: 'The radius leaves the board thin at its edges.',
    remedy: 'Take a thicker board or a flatter radius.',
  },
  'chamfer-too-wide': {
    title: 'Chamfer too wide',
    reason: 'The chamfer is wider than the crown’s overhang: it shows as a groove beside the fret and collects dirt.',
    remedy: 'Break the edges less, or take wire with a wider crown.',
  },
  'no-chamfer': {
    title: 'No chamfer',
    reason:
      'With next to no chamfer the crown may sit on raised edges, and the board chips when the frets are next pulled.',
    remedy: 'Break both edges of every slot a little.',
  },
  'slot-shows': {
    title: 'The slot shows',
    reason: 'The filed end stops short of the slot’s end: a hole shows beside every fret.',
    remedy: 'File the ends less far in, leave more lines whole, or fill the slot ends.',
  },
  'shelf-short': {
    title: 'Short shelf',
    reason: 'The crown hardly rests on the binding left whole; its end can be pressed into the slot.',
    remedy: 'File the ends less far in, or leave one more line whole.',
  },
  'tight-nip': {
    title: 'Tight nip',
    reason: 'The nipped tang has no room: when the board dries it pushes the binding off.',
    remedy: 'Nip a little more off each end.',
  },
  'binding-harmed': {
    title: 'Binding and glue',
    reason: {
      solvent: 'What takes this glue off wood softens or swells the binding: it smears, and pulls away as it dries.',
      water: 'Water in the glue makes the binding swell, and shrink again for days.',
      heat: 'Heat softens this binding and can let it shrink or lift; celluloid can catch fire.',
    },
    remedy: 'Shield the binding, and try glue or heat on an offcut of it first.',
  },
  'string-near-end': {
    title: 'String near the fret end',
    reason: 'Bevel and inset take so much of the crown that an outer string can slip off its end.',
    remedy: 'Bevel more steeply (a smaller angle), file the ends less far in, or set the outer strings further in.',
  },
  'studs-overlap': {
    title: 'Studs overlap',
    reason: 'Studs of this area at this pitch would cover more than the whole side of the tang.',
    remedy: 'Measure stud and pitch on the wire again.',
  },
  'bend-too-flat': {
    title: 'Wire bent too flat',
    reason: 'The wire is flatter than the board: its ends stand up and spring up again after pressing.',
    remedy: 'Bend it tighter than the board.',
  },
  'bend-too-tight': {
    title: 'Wire bent too tight',
    reason: 'The wire is much tighter than the board: flattening its middle spreads the ends and kinks the crown.',
    remedy: 'Bend it less.',
  },
  'little-oversize': {
    title: 'Little oversize',
    reason: 'There is next to no wire over the edges: a fret laid in a little to one side comes out short.',
    remedy: 'Cut the pieces longer.',
  },
  'short-grain-at-end': {
    title: 'Short grain at the end of the board',
    reason: 'The wedge of the last fret can shear off the short grain at the end of the board.',
    remedy: 'Leave the board longer until the frets are in, or glue the last fret.',
  },
  'clamps-too-weak': {
    title: 'Clamps too weak',
    reason:
      'The fretted board pulls up harder than clamps side by side press it down: it is glued on with a bow of its own.',
    remedy: 'Glue it on in a press or in a vacuum bag with cauls, take a wider kerf, or fret the finished neck.',
  },
  'strung-too-soon': {
    title: 'Strung too soon',
    reason: 'The strings go on before the glue has set through: it creeps, and the slots stay open.',
    remedy: 'Wait longer, or take a glue that sets sooner.',
  },
  nickel: {
    title: 'Nickel',
    reason: (limit: string) =>
      `The player is sensitive to nickel and this wire contains it. The European limit of ${limit} µg per cm² per week is one of release, and keeping it is no promise to someone already sensitised.`,
    remedy: 'Take a nickel-free alloy, and leave the judgement of the skin to a doctor.',
  },
  'nickel-strings': {
    title: 'Nickel in the strings',
    reason: (made: string) =>
      `The player is sensitive to nickel, and strings on this neck give it off (${made}). Fingers touch the strings more than the frets.`,
    remedy:
      'Take bronze-wound or nylon strings. For a magnetic pickup take strings wound with stainless steel: they give hardly any nickel off, but ask a doctor first.',
  },
  'string-near-breaking': {
    title: 'String near breaking',
    reason: 'A string is tuned close to the strength of its wire: it breaks at a bend or at the bridge, and whips.',
    remedy:
      'Tune it lower, shorten the scale, or take another construction. A thinner plain string carries the same stress.',
  },
  'strings-below-frets': {
    title: 'Strings below the frets at the nut',
    reason: 'The nut holds the strings lower than the frets are high: open strings lie on the first fret.',
    remedy: 'A higher nut, or a lower crown.',
  },
  'strings-too-close': {
    title: 'Strings too close at the nut',
    reason: 'So many strings on so narrow a nut leave no room for a fingertip between them.',
    remedy: 'A wider nut, fewer strings, or the outer strings nearer to the edge.',
  },
  'blank-incomplete': {
    title: 'Blank not wholly measured',
    reason: {
      neck: 'Numbers of the neck blank are still missing. Until all are there, the stiffness of the species counts.',
      board: 'Numbers of the board blank are still missing. Until all are there, the stiffness of the species counts.',
    },
    remedy: 'Enter what is missing, or go back to the value of the species.',
  },
  'blank-span': {
    title: 'Span longer than the blank',
    reason: {
      neck: 'The supports stand further apart than the neck blank is long, and the prediction is built on it.',
      board: 'The supports stand further apart than the board blank is long, and the prediction is built on it.',
    },
    remedy: 'Measure the distance between the supports again, and the length of the blank.',
  },
  'blank-sags-far': {
    title: 'Blank bent too far',
    reason: {
      neck: 'The neck blank went down so far that load and deflection are no longer in proportion.',
      board: 'The board blank went down so far that load and deflection are no longer in proportion.',
    },
    remedy: 'Measure again with a lighter weight.',
  },
  'blank-unlikely': {
    title: 'Blank far from its species',
    reason: {
      neck: 'The measurements of the neck blank make it far stiffer or far softer than its wood usually is.',
      board: 'The measurements of the board blank make it far stiffer or far softer than its wood usually is.',
    },
    remedy: 'Measure again, or see whether it is another wood.',
  },
  'blank-implausible': {
    title: 'Measurements of a blank that cannot be right',
    reason: {
      neck: 'The measurements of the neck blank give a stiffness that no wood has, and the prediction is built on it.',
      board:
        'The measurements of the board blank give a stiffness that no wood has, and the prediction is built on it.',
    },
    remedy: 'Measure again: length, width, thickness, and mass with frequency or load with span and deflection.',
  },
  'back-bow-no-rod': {
    title: 'Back-bow beyond the rod',
    reason: {
      slack:
        'The neck stays too far back even with the rod slack. A one-way rod only bends it further back: no turn of the nut can remove this.',
      high: 'The neck stays too far back even with the rod as tight as it may be. It pulls above the middle of this neck’s wood and bends it forward, but only a little.',
      pushing: 'The neck stays too far back even with the rod pushing as hard as it may.',
    },
    remedy:
      'Widen the kerf or seat as a glue fit, plane the difference into the board before fretting, take heavier strings, or a two-way rod. A neck that is fretted already can be bent with heat.',
  },
  'forward-bow-no-rod': {
    title: 'Forward bow beyond the rod',
    reason: {
      high: 'The strings pull the neck too far forward, and a one-way rod cannot pull this neck back: it pulls above the middle of its wood. Forcing the nut breaks the rod.',
      pulling:
        'The strings pull the neck further forward than the rod may pull it back. Forcing the nut breaks the rod.',
    },
    remedy: 'A stronger rod, stiff bars, a thicker or stiffer neck, lighter strings, or frets that wedge more.',
  },
  'rod-near-limit': {
    title: 'Rod near its limit',
    reason: 'Nearly the whole range of the rod is spent on frets and strings; nothing is left for the seasons.',
    remedy: 'Change kerf or way of seating, or stiffen the neck, so that the rod works in its middle.',
  },
  'rod-lies-high': {
    title: 'The rod lies high',
    reason: 'The rod lies above the middle of this neck’s wood: tightening it bends the neck forward, not back.',
    remedy: 'A deeper channel, more curve, or a two-way rod.',
  },
  'rod-without-room': {
    title: 'No room for the rod',
    reason: 'The channel is smaller than the thread of the rod: the rod does not go in.',
    remedy: 'Rout it wider or deeper, or take a thinner rod.',
  },
  'channel-too-deep': {
    title: 'Channel too deep',
    reason: {
      thin: 'So deep a channel leaves little wood behind the rod: the rod can push through the back, and the neck is weak there.',
      capped:
        'So deep a channel would leave too little wood behind the rod. Numbers and picture take it no deeper than the limit, and less where the neck is thinner.',
    },
    remedy: 'Rout shallower, or make the neck thicker.',
  },
  'no-rod': {
    title: 'No rod to set it',
    reason: 'The neck does not settle at the relief that you want, and there is no rod to bring it there.',
    remedy: 'Change kerf or way of seating, plane the difference into the board before fretting, or build a rod in.',
  },
  'crown-too-low': {
    title: 'Crowns too low',
    reason: 'Levelling would take these crowns below the least height that plays well.',
    remedy: 'Take the bow out before levelling (kerf, seating, rod, plane), or take wire with a higher crown.',
  },
  'last-levelling': {
    title: 'The last levelling',
    reason: 'After levelling, these crowns are too low to be levelled once more when they are worn.',
    remedy: 'Take the bow out before levelling, or take wire with a higher crown.',
  },
  'limit-stiff-neck': {
    title: 'This neck may stay back-bowed for weeks',
    reason:
      'Makers see the back-bow of thick laminated necks of heavy wood outlast the stringing and fade over weeks. Here the strings pull it out on the first day.',
    remedy:
      'Trust the bow with the frets in. Under strings expect this neck further back than shown, and measure it on the first day and again after some weeks before you set the rod.',
  },
  'limit-pressed-settled': {
    title: 'Pressed against glued is not sure once settled',
    reason:
      'Makers find a neck with glued-in frets the hollower one for good. Here the pressed neck ends up hollower after some weeks, because its wedges relax and its slots give more.',
    remedy:
      'Trust both on the day of stringing. Do not choose between pressing and gluing by the settled numbers: the pressed one is probably too high.',
  },
  dust: {
    title: 'Dust',
    reason: (caution: string) => caution,
    remedy: 'Extract, wear a mask, vacuum.',
  },
  'dust-sensitising': {
    title: 'Dust that sensitises',
    reason: (caution: string) => caution,
    remedy: 'Cover up, and stop at the first sign of irritation.',
  },
  glue: {
    title: 'Glue',
    reason: (caution: string) => caution,
    remedy: 'Read the data sheet of the glue in your hand.',
  },
  heat: {
    title: 'Heat',
    reason: (caution: string) => caution,
    remedy: 'Warm slowly, measure after a week, and enter the bow that is left.',
  },
  'listed-wood': {
    title: 'Protected wood',
    reason: (caution: string) => caution,
    remedy:
      'Check the listing before buying, selling or shipping. Wood of Appendix I, such as Brazilian rosewood, may not cross a border for trade.',
  },
} satisfies CheckTexts);
