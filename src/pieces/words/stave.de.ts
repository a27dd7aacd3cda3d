/** What the drawings of staves and the gauge for their angles say, in German. */
import { germanHoop } from '../../hoop-names.js';
import type { Words } from './index.js';

export const staveWordsGerman: Pick<Words, 'stave' | 'fan' | 'endGauge'> = {
  stave: {
    title: (count) => `Daube, ${count} im Kreis`,
    backedTitle: 'Daubenumriss auf der gerundeten Seite',
    mixedTitle: (number, count, width) => `Daube ${number} von ${count}, ${width} breit`,
    marked: (title, mark) => `${title}, Zeichen ${mark}`,
    station: (s, width, bevel, thickness) => `${s}: ${width} · ${bevel} · ${thickness}`,
    outerEnd: (end) => `Ende ${end}, Außenseite`,
    innerEnd: (end, angle) => `Ende ${end}, innen, ${angle}`,
    cutEnd: (end, angle) => `Ende ${end}, Schnitt ${angle}`,
    blankEnd: (trim) => `Rohling, Zugabe ${trim}`,
    groove: 'Gargelkante, innen',
    howel: 'Rand der Glättung, innen',
    hoopEdge: germanHoop,
    notes: {
      closes: (count, diameter) =>
        `${count} solche Dauben schließen sich an der weitesten Stelle bei einem Außendurchmesser von ${diameter}.`,
      closesMixed: (count, diameter) =>
        `Eine von ${count} ungleich breiten Dauben, die sich zusammen bei einem Außendurchmesser von ${diameter} schließen.`,
      faces: (thickness) =>
        `Die Außenseite ist zum Betrachter gewandt. Gestrichelt: die Innenseite des flachen Rohlings, ${thickness} darunter. Das obere Ende liegt rechts.`,
      key: 'Über jeder Messstelle: Abstand von der Mitte, Breite der Außenseite, Fugenwinkel, Dicke des Rohlings. Darunter: Reifkanten auf der Außenseite; Gargel, Glättung und Endebenen auf der genannten Seite.',
      bevel: (bilge, bilgeSlope, end, endSlope) =>
        `Fugenwinkel, vom rechten Winkel zur Seite aus: ${bilge} an der weitesten Stelle (${bilgeSlope} je 100), ${end} am Ende (${endSlope} je 100).`,
      fixedBevel: (gap) =>
        `Der Winkel ändert sich entlang der Daube: eine einzige Lehre, an der weitesten Stelle eingestellt, lässt am Ende innen ${gap} je Fuge offen.`,
      evenBevel: (angle, slope) =>
        `Fugenwinkel, vom rechten Winkel zur Seite aus: ${angle} (${slope} je 100), auf der ganzen Daube gleich.`,
      blade: (tilt) =>
        `Ein Sägeblatt, das rechtwinklig zur Kante der Daube steht, wird um ${tilt} geneigt.`,
      endCut: (end, angle, longer) =>
        `Endschnitt ${end}: ${angle} vom rechten Winkel; die Innenseite ist ${longer} als die Außenseite.`,
      longer: (by) => `um ${by} länger`,
      shorter: (by) => `um ${by} kürzer`,
      overlong: (trim) =>
        `Beide Seiten laufen ${trim} über das längere Ende hinaus und werden rechtwinklig gesägt; nach dem Biegen auf die Endebenen ablängen.`,
      squareEnd: (end) => `Endschnitt ${end}: rechtwinklig.`,
      routerLength: (end, add) =>
        `Für die Fräse: „outline“ ist die Außenseite, und die Innenseite ist am Ende ${end} länger. Dort vor dem Fräsen ${add} zugeben, sonst fehlt dem Endschnitt Holz.`,
      routerEdges:
        'Eine Fräse schneidet „outline“ rechtwinklig: für den Fugenwinkel muss das Werkstück gedreht, der Fräser geneigt oder nachgehobelt werden.',
      hollow: (t) =>
        `Die Innenseite in der Mitte bis auf ${t} Dicke aushöhlen; an den Fugen bleibt die volle Dicke des Rohlings, wo das Gefäß am weitesten ist.`,
      flatInside: 'Die Innenseite bleibt flach.',
      rounded: 'Die Außenseite nach dem Fügen auf den Kreis des Gefäßes runden.',
      flatOutside: 'Die Außenseite bleibt flach.',
      grain: 'Die Faser läuft längs der Daube, ohne auszulaufen.',
      bung: (diameter) =>
        `Nur auf der Spunddaube: Spundloch von ${diameter}, seine Mitte auf der Messstelle 0.`,
      backed:
        'Der Umriss auf diesem Blatt liegt auf der gerundeten Seite: seine Breite ist über die Rundung gemessen.',
    },
    table: {
      title: 'Messstellen',
      headings: (unit) => [
        `Stelle ${unit}`,
        `Höhe ${unit}`,
        `Breite ${unit}`,
        'Winkel',
        'je 100',
        `Rohling ${unit}`,
      ],
    },
  },
  fan: {
    title: 'Daubenfächer für ungleiche Breiten',
    label: (width, bevel, thickness) => `${width} breit · ${bevel} · Rohling ${thickness}`,
    notes: {
      use: 'Jedes Linienpaar ist die Außenseite einer Breite an der weitesten Stelle. Die Mitte des Rohlings auf die Mittellinie legen, seine Breite suchen, dieses Paar anreißen.',
      cut: 'Nur die größte Breite ist als Umriss gezeichnet; die übrigen sind Linien zum Anreißen.',
      why: 'Alle Breiten einer Daube nehmen miteinander ab, darum dient ein Muster allen Breiten im Vorrat.',
    },
    table: {
      title: 'Breiten',
      headings: (unit) => [
        `Breite ${unit}`,
        `an den Enden ${unit}`,
        'Winkel',
        'Winkel an den Enden',
        `Rohling ${unit}`,
      ],
    },
  },
  endGauge: {
    title: 'Lehre für Fugenwinkel und Endschnitte',
    joint: (place, angle, slope) => `Fuge ${place}: ${angle}, ${slope} je 100`,
    endCut: (end, angle, slope) => `Endschnitt ${end}: ${angle}, ${slope} je 100`,
    widest: 'am Bauch',
    even: 'an der ganzen Daube',
    atEnd: (end) => `am Ende ${end}`,
    atEnds: 'an den Enden',
    bothEnds: 'beide Enden',
    face: 'diese Kante auf der Außenseite',
    wood: 'Daube, Außenseite oben',
    notes: {
      use: 'Jede Lehre ausschneiden. Ihr Fuß liegt auf der Außenseite, für eine Fuge quer, für einen Endschnitt längs; am Arm darf kein Licht durchscheinen.',
      set: 'Oder eine Schmiege nach der Ecke einstellen.',
      blade: (tilt) =>
        `Eine Säge, die rechtwinklig zur Kante der Daube steht, wird stattdessen um ${tilt} geneigt.`,
    },
  },
};
