/** Every message's wording, in German; `wording.ts` says how it is built and how to add one. */
import { decimalComma } from '../language.js';
import type { Manner, Say } from './say.js';
import { wordingOf as words, type Wording } from './wording.js';
import type { AllWordings } from './wordings.js';

const unitNames: Record<string, string> = { mm: 'Millimeter', in: 'Zoll' };
const ends: Record<string, string> = { top: 'oberen', bottom: 'unteren' };
const endOf = (say: Say): string => ends[say.word('end')] ?? say.word('end');
const didYouMean = (say: Say): string =>
  say.has('meant') ? `Ist \`${say.word('meant')}\` gemeint?` : '';

function wrongLength(say: Say, problem: string): Wording {
  const other = say.word('meant');
  const hint = say.has('meant')
    ? `Als ${unitNames[other]} würde die Zahl passen: ist \`units: ${other}\` gemeint?`
    : `Längen in dieser Datei sind ${unitNames[say.units]}: die Zahl prüfen.`;
  return words(
    say.length('found'),
    say.range('min', 'max'),
    `\`${say.key}\` ist ${problem}.`,
    hint,
  );
}

function unreadableLength(say: Say, remedy: string): Wording {
  const text = `\`${say.key}\` ist eine Länge, und das lässt sich nicht als solche lesen.`;
  return words(say.word('found'), say.range('min', 'max'), text, remedy);
}

const kinds: Record<string, string> = {
  count: 'eine ganze Zahl',
  share: 'ein Anteil',
  degrees: 'ein Winkel in Grad',
  length: 'eine Länge',
};

function allowedNumber(say: Say): string {
  if (say.word('unit') === 'length') return say.range('min', 'max');
  const unit = say.word('unit') === 'degrees' ? ' Grad' : '';
  return `${say.number('min')} bis ${say.number('max')}${unit}`;
}

function wrongNumber(say: Say, found: string, text: string): Wording {
  return words(found, allowedNumber(say), text);
}

const syntaxProblems: Record<string, string> = {
  TAB_AS_INDENT: 'Die Zeile ist mit einem Tabulator eingerückt. Mit Leerzeichen einrücken.',
  BAD_INDENT:
    'Die Zeile ist anders eingerückt als ihre Nachbarn. Schlüssel eines Abschnitts beginnen in einer Spalte.',
  MISSING_CHAR:
    'Hier oder darüber fehlt etwas: ein schließendes Anführungszeichen, eine Klammer, ein Komma oder ein Leerzeichen nach einem Doppelpunkt.',
  BLOCK_AS_IMPLICIT_KEY:
    'Zwei Schlüssel stehen auf einer Zeile, oder ein Text mit Doppelpunkt steht nicht in Anführungszeichen. Einen Schlüssel je Zeile schreiben und solchen Text in Anführungszeichen setzen.',
  MULTILINE_IMPLICIT_KEY:
    'Auf dieser Zeile fehlt der Doppelpunkt nach dem Schlüssel. `Schlüssel: Wert` schreiben.',
  KEY_OVER_1024_CHARS: 'Der Schlüssel ist über tausend Zeichen lang.',
  BAD_DQ_ESCAPE:
    'Ein umgekehrter Schrägstrich zwischen doppelten Anführungszeichen beginnt einen Code, den es nicht gibt. Einfache Anführungszeichen nehmen.',
  BAD_SCALAR_START: 'Text, der mit @ oder ` beginnt, muss in Anführungszeichen stehen.',
  BAD_ALIAS: 'Text, der mit * oder & beginnt, muss in Anführungszeichen stehen.',
};
const otherSyntax =
  'Das lässt sich nicht als YAML lesen. Klammern, Anführungszeichen und Doppelpunkte dieser Zeile und der darüber prüfen.';

const messages: AllWordings['messages'] = {
  // The file as a whole

  'file-empty': () =>
    words(
      'keine Schlüssel',
      'Angaben zu einem Gefäß',
      'Die Datei ist leer. Nötig sind mindestens vessel, units, height, die Außendurchmesser und staves.',
    ),
  'file-too-big': (say) =>
    words(
      `${say.number('found')} Zeichen`,
      `${say.number('most')} Zeichen`,
      'Die Datei ist zu groß und wurde nicht gelesen.',
    ),
  'file-too-long': (say) =>
    words(
      `mehr als ${say.number('most')} Wörter und Zeichen`,
      `${say.number('most')} Wörter und Zeichen`,
      'Die Datei ist zu lang und wurde nicht gelesen.',
    ),
  'not-a-text-file': () =>
    words(
      'Bytes, die kein Text sind',
      'Text in UTF-8',
      'Das ist keine Textdatei oder keine in UTF-8. Als reinen Text in UTF-8 speichern.',
    ),
  'nested-too-deep': (say) =>
    words(
      `mehr als ${say.number('most')} Ebenen`,
      `${say.number('most')} Ebenen`,
      'Listen oder Abschnitte stehen zu tief ineinander. Vier Ebenen genügen.',
    ),
  'yaml-syntax': (say) => words('', '', syntaxProblems[say.word('problem')] ?? otherSyntax),
  'several-documents': () =>
    words(
      'ein zweites Dokument',
      'ein Gefäß je Datei',
      'Eine Zeile `---` beginnt hier ein zweites Dokument. Jedes Gefäß in eine eigene Datei schreiben.',
    ),
  'yaml-directive': () =>
    words(
      'eine Zeile, die mit % beginnt',
      'einfaches YAML',
      'Anweisungen wie %YAML werden hier nicht gebraucht. Die Zeile herausnehmen.',
    ),
  'root-not-keys': () =>
    words(
      'eine Liste oder ein einzelner Wert',
      'Zeilen mit `Schlüssel: Wert`',
      'Die Datei beschreibt kein Gefäß: sie besteht nicht aus Schlüsseln mit Werten.',
    ),
  'yaml-alias': (say) =>
    words(
      say.word('found'),
      'der Wert selbst',
      'Verweise mit * werden hier nicht gebraucht. Den Wert selbst schreiben oder den Text in Anführungszeichen setzen.',
    ),
  'yaml-anchor': (say) =>
    words(
      say.word('found'),
      'der Wert allein',
      'Marken mit & werden hier nicht gebraucht. Die Marke herausnehmen oder den Text in Anführungszeichen setzen.',
    ),
  'yaml-tag': (say) =>
    words(
      say.word('found'),
      'der Wert allein',
      'Typen mit ! werden hier nicht gebraucht. Den Typ herausnehmen oder den Text in Anführungszeichen setzen.',
    ),
  'merge-key': () =>
    words(
      '<<',
      'die Schlüssel selbst',
      'Der Schlüssel `<<` wird hier nicht gebraucht. Die Schlüssel ausschreiben.',
    ),
  'more-issues': (say) =>
    words(
      `noch ${say.number('more')}`,
      '',
      'Es gibt mehr Fehler, als gezeigt werden. Zuerst diese beheben.',
    ),
  'not-understood': (say) =>
    words(say.word('found'), '', `\`${say.key}\` ist so nicht zu gebrauchen.`),

  // Keys

  missing: (say) =>
    words('nichts', 'ein Wert', `\`${say.key}\` fehlt und hat keine Vorgabe. Hinzufügen.`),
  'no-staves': () =>
    words(
      'nichts',
      '`staves.count` oder `staves.widths`',
      'Wie viele Dauben? `staves: { count: ... }` hinzufügen, oder `widths: [...]` für ungleiche.',
    ),
  'unknown-key': (say) => {
    const away = say.has('elsewhere') ? `Er gehört unter ${say.word('elsewhere')}.` : '';
    return words(
      say.word('found'),
      say.word('allowed'),
      `\`${say.key}\` ist hier kein Schlüssel.`,
      didYouMean(say) || away || 'Herausnehmen.',
    );
  },
  'key-doubled': (say) =>
    words(
      'der Schlüssel noch einmal',
      'jeder Schlüssel einmal',
      `\`${say.key}\` steht zweimal da, zuerst auf Zeile ${say.number('first')}. Eines herausnehmen.`,
    ),
  'key-not-text': () =>
    words(
      'ein Schlüssel, der kein Wort ist',
      'Wörter als Schlüssel',
      'Diese Zeile hat kein Wort als Schlüssel. `Schlüssel: Wert` schreiben.',
    ),
  'key-of-other-vessel': (say) =>
    say.word('vessel') === 'cask'
      ? words(
          say.key,
          'bilge und ends',
          `\`${say.key}\` gehört zu einem geraden Gefäß (tub). Ein Fass hat bilge und ends; oder \`vessel: tub\` schreiben.`,
        )
      : words(
          say.key,
          'top und bottom',
          `\`${say.key}\` gehört zu einem Fass (cask). Ein gerades Gefäß hat top und bottom; oder \`vessel: cask\` schreiben.`,
        ),
  'tub-without-top': () =>
    words(
      'heads.top',
      'heads.bottom',
      'Ein gerades Gefäß (tub) hat nur unten einen Boden. `heads.top` herausnehmen.',
    ),

  // Values

  'not-a-group': (say) =>
    words(
      say.word('found'),
      'Schlüssel mit Werten',
      `\`${say.key}\` enthält Schlüssel, etwa \`{ Schlüssel: Wert }\` oder eingerückte Zeilen darunter.`,
    ),
  'not-a-list': (say) =>
    words(
      say.word('found'),
      'eine Liste',
      `\`${say.key}\` ist eine Liste: in eckigen Klammern oder als Zeilen mit Spiegelstrich; [] für keine.`,
    ),
  'list-too-long': (say) =>
    words(
      `${say.number('found')} Einträge`,
      `höchstens ${say.number('most')}`,
      `\`${say.key}\` hat zu viele Einträge.`,
    ),
  'list-too-short': (say) =>
    words(
      `${say.number('found')} Einträge`,
      `mindestens ${say.number('least')}`,
      `\`${say.key}\` hat zu wenige Einträge.`,
    ),
  'not-a-choice': (say) =>
    words(
      say.word('found'),
      say.word('allowed'),
      `\`${say.key}\` muss eines dieser Wörter sein.`,
      didYouMean(say),
    ),
  'not-a-bung': (say) =>
    words(
      say.word('found'),
      '{ diameter: ... } oder none',
      '`bung: { diameter: ... }` oder `bung: none` schreiben.',
    ),
  'not-text': (say) =>
    words(
      say.word('found'),
      'eine Zeile Text',
      `\`${say.key}\` muss Text sein. In Anführungszeichen setzen.`,
    ),
  'text-of-several-lines': (say) =>
    words(
      say.word('found'),
      'eine Zeile Text',
      `\`${say.key}\` enthält einen Zeilenumbruch. Auf eine Zeile schreiben.`,
    ),
  'text-unprintable': (say) =>
    words(
      say.word('character'),
      'Buchstaben, Ziffern und Zeichen',
      `\`${say.key}\` enthält ein Zeichen, das sich nicht drucken lässt. Herausnehmen.`,
    ),
  'text-too-long': (say) =>
    words(
      `${say.number('length')} Zeichen`,
      `höchstens ${say.number('most')}`,
      `\`${say.key}\` ist zu lang für eine Zeichnung.`,
    ),
  'name-not-plain': (say) =>
    words(
      say.word('found'),
      'Buchstaben, Ziffern, Leerzeichen, Bindestriche, einzelne Punkte',
      `\`${say.key}\` wird Teil von Dateinamen. Einen einfachen Namen nehmen, etwa chime.`,
    ),
  'not-a-number': (say) =>
    wrongNumber(
      say,
      say.word('found'),
      `\`${say.key}\` ist ${kinds[say.word('unit')] ?? 'eine Zahl'}: Ziffern schreiben, ohne Anführungszeichen.`,
    ),
  'not-finite': (say) =>
    wrongNumber(say, say.word('found'), `\`${say.key}\` muss eine endliche Zahl sein.`),
  'not-whole': (say) =>
    wrongNumber(say, say.word('found'), `\`${say.key}\` muss eine ganze Zahl sein.`),
  'number-out-of-range': (say) =>
    wrongNumber(
      say,
      say.number('found'),
      `\`${say.key}\` liegt außerhalb dessen, was sich bauen lässt.`,
    ),
  'length-too-small': (say) => wrongLength(say, 'zu klein'),
  'length-too-large': (say) => wrongLength(say, 'zu groß'),
  'not-a-length': (say) =>
    unreadableLength(
      say,
      say.units === 'in'
        ? 'Zoll als 37.375 oder 37 3/8 schreiben.'
        : 'Millimeter als Zahl schreiben, etwa 945 oder 37.5.',
    ),
  'comma-in-number': (say) =>
    unreadableLength(
      say,
      'In der Datei stehen Dezimalen nach einem Punkt, nicht nach einem Komma.',
    ),
  'unit-in-length': (say) =>
    unreadableLength(
      say,
      `Nur die Zahl schreiben: \`units: ${say.units}\` sagt, worin gemessen wird.`,
    ),
  'quoted-number': (say) => unreadableLength(say, 'Die Anführungszeichen weglassen.'),
  'fraction-in-millimetres': (say) =>
    unreadableLength(say, 'Brüche sind für Zoll: ist `units: in` gemeint?'),

  // One key against another

  'profile-not-built': () =>
    words(
      'measured',
      'arc, parabola, ellipse',
      'Ein gemessenes Profil gibt es noch nicht. Die Formel wählen, die am nächsten kommt.',
    ),
  'bilge-below-ends': (say) =>
    words(
      say.length('bilge'),
      `mehr als die Enden, ${say.length('ends')}`,
      'Ein Fass ist am Bauch am weitesten. Sind bilge und ends vertauscht?',
    ),
  'bilge-equals-ends': (say) =>
    words(
      say.length('bilge'),
      `mehr als die Enden, ${say.length('ends')}`,
      'Ein Gefäß, das am Bauch so weit ist wie an den Enden, hat gerade Dauben: `vessel: tub` schreiben, mit top und bottom.',
    ),
  'count-and-widths': () =>
    words(
      'count und widths',
      'eines von beiden',
      'Gleiche Dauben haben eine Anzahl (count), ungleiche haben Breiten (widths). Eines herausnehmen.',
    ),
  'boards-and-widths': () =>
    words(
      'boards und widths',
      'eines von beiden',
      'Gleiche Bodenstücke haben eine Anzahl (boards), ungleiche haben Breiten (widths). Eines herausnehmen.',
    ),
  'end-thickness-far-off': (say) =>
    words(
      say.length('endThickness'),
      say.range('min', 'max'),
      `So viel können die Enden einer Daube von ${say.length('thickness')} Dicke nicht abweichen.`,
    ),
  'chime-flat-too-wide': (say) =>
    words(
      say.length('flat'),
      `höchstens ${say.length('endThickness')}`,
      'Die ebene Kante am Frosch ist breiter, als das Daubenende dick ist. Schmaler machen.',
    ),
  'no-room-inside': (say) =>
    words(
      say.length('thickness'),
      `weniger als ${say.length('max')}`,
      `So dicke Dauben lassen in einem Gefäß von ${say.length('diameter')} keinen Raum.`,
    ),
  'land-thicker-than-groove': (say) =>
    words(
      say.length('land'),
      `höchstens ${say.length('groove')}`,
      'Der Steg des Bodens ist dicker, als seine Gargel breit ist, und geht nicht hinein. Den Steg dünner oder die Gargel breiter machen.',
    ),
  'land-outside-head': (say) =>
    words(
      say.length('fromInside'),
      say.range('least', 'most'),
      'Der Steg läge zum Teil außerhalb des Bodens. Mit `edge.fromInside` versetzen oder den Boden dicker machen.',
    ),
  'dowel-thicker-than-head': (say) =>
    words(
      say.length('diameter'),
      `weniger als ${say.length('thickness')}`,
      'Die Dübel sind dicker als der Boden. Dünnere nehmen.',
    ),
  'groove-at-the-end': (say) =>
    words(
      say.length('inset'),
      `mehr als ${say.length('least')}`,
      'Die Gargel bräche am Ende der Dauben aus. Weiter nach innen setzen.',
    ),
  'no-room-between-heads': (say) =>
    words(
      say.length('taken'),
      `weniger als ${say.length('height')}`,
      'Frösche und Böden nehmen die ganze Höhe ein. `croze.inset` kleiner machen.',
    ),
  'hoop-beyond-vessel': (say) =>
    words(
      say.length('offset'),
      `weniger als ${say.length('height')}`,
      'Der Reif liegt jenseits des anderen Endes. `offset` zählt von der Endebene, längs der Achse.',
    ),
  'hoop-name-doubled': (say) =>
    words(
      say.word('name'),
      'jedem ein Name',
      'Zwei Reifen an einem Ende heißen gleich. Jedem einen eigenen Namen geben.',
    ),

  // What the geometry finds

  'staves-do-not-close': (say) =>
    words(
      say.length('closesAt'),
      `etwa ${say.length('wanted')}`,
      'Dauben dieser Breiten schließen sich bei diesem Durchmesser, weit von dem, der angegeben ist. Dauben hinzufügen oder weglassen, oder den Durchmesser ändern.',
    ),
  'staves-close-elsewhere': (say) =>
    words(
      say.length('closesAt'),
      `etwa ${say.length('wanted')}`,
      'Der Satz schließt sich bei einem eigenen Durchmesser; alle Zahlen und Muster gelten für diesen.',
    ),
  'wall-too-steep': (say) =>
    words(
      say.degrees('leanDegrees'),
      `höchstens ${say.degrees('allowed')}`,
      'Die Wand neigt sich am Ende zu sehr, um Boden und Reifen zu halten. Die Durchmesser einander annähern oder das Gefäß höher machen.',
    ),
  'profile-ends-early': (say) =>
    words(
      say.length('reach'),
      `mindestens ${say.length('needed')}`,
      'Die Wand schließt sich, bevor die Dauben enden, von halber Höhe gemessen. Die Durchmesser einander annähern oder `staves.trim` kleiner machen.',
    ),
  'wall-too-thick': (say) =>
    words(
      say.length('thickness'),
      `deutlich unter dem Radius, ${say.length('radius')}`,
      'Die Dauben sind zu dick für ein so enges Gefäß. Dünner machen, oder mehr nehmen.',
    ),
  'bend-too-tight': (say) =>
    words(
      say.length('thickness'),
      `höchstens ein Fünftel des Biegeradius, ${say.length('bendRadius')}`,
      'Keine Daube dieser Dicke lässt sich so weit biegen. Dünner machen, oder den Bauch kleiner.',
    ),
  'heads-meet': () =>
    words('', '', 'Die beiden Böden treffen sich im Fass. `croze.inset` kleiner machen.'),
  'outer-face-stretches': (say) =>
    words(
      `${say.number('percent')} %`,
      `${say.number('allowed')} %`,
      'Die Außenseite muss sich mehr dehnen, als Holz sicher erträgt, auch heiß und nass. Dünnere Dauben oder weniger Bauch biegen sich sicherer.',
    ),
  'joint-vanishes': (say) =>
    words(
      say.length('left'),
      `bis ${say.length('thickness')}`,
      'Wird die Außenseite flacher Dauben gerundet, bleibt an den Fugen kein Holz. Dickere oder mehr Dauben nehmen, oder `inside: hollowed`.',
    ),
  'joint-thin': (say) =>
    words(
      say.length('left'),
      `näher an ${say.length('thickness')}`,
      'Wird die Außenseite flacher Dauben gerundet, bleiben die Fugen dünn. Dickere oder mehr Dauben, oder `inside: hollowed`, lassen mehr.',
    ),
  'ends-too-thin': (say) =>
    words(
      say.length('left'),
      'mehr als nichts',
      'Von den Daubenenden bleibt nichts übrig. `staves.endThickness` größer machen.',
    ),
  'neighbours-step': (say) =>
    words(
      say.length('step'),
      'keine Stufe',
      'Mit flacher Außenseite stoßen ungleich breite Dauben nicht bündig aneinander: außen steht eine Stufe. Gleiche neben gleiche setzen, oder `outside: rounded` schreiben.',
    ),
  'groove-past-middle': (say) =>
    words(
      say.length('inset'),
      'weniger als die halbe Höhe',
      'Die Gargel liegt jenseits der Mitte des Gefäßes. `croze.inset` zählt von der Endebene.',
    ),
  'groove-in-chime': (say) =>
    words(
      say.length('inset'),
      `jenseits der Fase, ${say.length('bevelDepth')} tief`,
      'Die Froschfase läuft in die Gargel. Die Gargel weiter nach innen setzen, die Fase flacher machen oder mehr eben lassen.',
    ),
  'groove-through-wall': (say) =>
    words(
      say.length('left'),
      `ein guter Teil von ${say.length('thickness')}`,
      'Die Gargel lässt von der Wand fast nichts stehen. Gargel oder Glättung (howel) flacher machen, oder die Enden dicker.',
    ),
  'groove-deep': (say) =>
    words(
      say.length('left'),
      `ein Drittel von ${say.length('thickness')}`,
      'Die Gargel lässt hinter sich wenig Holz, und dort kann die Daube brechen. Gargel oder Glättung (howel) flacher machen.',
    ),
  'bevel-narrower-than-land': (say) =>
    words(
      say.length('bevel'),
      `mindestens ${say.length('land')}`,
      'Die Fase des Bodens endete innerhalb des Steges, der in der Gargel sitzt. Breiter machen.',
    ),
  'bevel-too-wide': (say) =>
    words(
      say.length('bevel'),
      `höchstens ${say.length('allowed')}`,
      'Die Fase nimmt zu viel vom Boden ein. Schmaler machen.',
    ),
  'boards-too-narrow': (say) =>
    words(
      say.length('laid'),
      `mindestens ${say.length('needed')}`,
      'Die Bodenstücke nebeneinander sind schmaler als der Boden. Breite zugeben.',
    ),
  'board-outside-head': (say) =>
    words(
      say.length('joint'),
      `weniger als ${say.length('radius')}`,
      'Eine Fuge zwischen Stücken liegt außerhalb des Bodens, von seiner Mitte gezählt: das äußere Stück ist überflüssig. Weglassen oder die Breiten ändern.',
    ),
  'joints-without-dowels': (say) =>
    words(
      `Fuge ${say.word('joints')}`,
      '',
      'In dieser Fuge findet kein Dübel Platz. Kleinere Dübel, Abstände oder Ränder helfen vielleicht; sonst müssen Leim oder Schilf genügen.',
    ),
  'dowels-thick': (say) =>
    words(
      say.length('diameter'),
      `ein Drittel bis die Hälfte von ${say.length('thickness')}`,
      'Die Dübel lassen neben sich wenig von den Stücken. Dünnere halten besser.',
    ),
  'head-misses-groove': (say) =>
    words(
      say.length('clearance'),
      say.range('least', 'most'),
      'Mit diesem Spiel reichte der Boden nicht in seine Gargel oder ginge nicht hinein. clearance oder crossGrain ändern.',
    ),
  'head-meets-wall': (say) =>
    words(
      say.length('overlap'),
      'frei von der Wand',
      'Der Boden schnitte außerhalb seiner Gargel in die Wand. Die Fasen verbreitern oder den Steg mit `edge.fromInside` versetzen.',
    ),
  'no-hoop-at-groove': (say) =>
    words(
      say.length('distance'),
      `innerhalb von ${say.length('allowed')}`,
      `Am ${endOf(say)} Ende liegt kein Reif nahe der Gargel: sie kann sich öffnen, wenn der Boden eingetrieben wird. Einen Reif näher setzen.`,
    ),
  'hoop-leaves-stave': (say) =>
    words(
      say.word('name'),
      'zwischen den Endebenen',
      `Der Reif ${say.word('name')} am ${endOf(say)} Ende ragt über die Daubenenden. offset oder width ändern.`,
    ),
  'hoops-overlap': (say) =>
    words(
      say.length('overlap'),
      'nebeneinander',
      `Die Reifen ${say.word('name')} und ${say.word('other')} liegen übereinander. offset oder width ändern.`,
    ),
  'bung-wider-than-stave': (say) =>
    words(
      say.length('diameter'),
      `weniger als ${say.length('width')}`,
      'Das Spundloch ist weiter als die breiteste Daube. Kleiner machen, oder eine breitere Spunddaube geben.',
    ),
  'bung-leaves-little': (say) =>
    words(
      say.length('diameter'),
      `drei Viertel von ${say.length('width')}`,
      'Das Spundloch lässt beiderseits wenig von seiner Daube. Ein kleinerer Spund oder eine breitere Daube ist sicherer.',
    ),
};

/** `shown.ts` has these, and the values and quoted texts of the file itself. */
function shown(english: string): string {
  if (english === 'nothing') return 'nichts';
  if (english === 'a group of keys') return 'eine Gruppe von Schlüsseln';
  return english.replace(/^a list of (\d+)$/, 'eine Liste von $1');
}

const manner: Manner = {
  typeset: decimalComma,
  range: (least, most) => `${least} bis ${most}`,
  degrees: (number) => `${number} Grad`,
  about: (fraction) => `etwa ${fraction}`,
  shown,
  unknown: (code) => `Die Regel \`${code}\` ist nicht erfüllt.`,
};

export const german: AllWordings = { messages, manner };
