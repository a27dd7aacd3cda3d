/** What the gauges and jigs say, in German. */
import { germanHoop } from '../../hoop-names.js';
import type { gaugeWords } from './gauges.en.js';

const ofEnd = (title: string, end: string | null): string => (end ? `${title}, ${end}` : title);

export const gaugeWordsGerman: typeof gaugeWords = {
  places: {
    bilge: 'am Bauch',
    ends: 'an den Enden',
    top: 'am oberen Ende',
    bottom: 'am unteren Ende',
    all: 'an der ganzen Daube',
  },
  square:
    'Rechtwinklig zur Seite der Daube halten, nicht zur Achse des Gefäßes: nahe den Enden ist das zweierlei.',
  hook: 'diese Kante auf das Daubenende',
  held: 'von innen angehalten',
  joint: {
    title: 'Fügelehre für Dauben jeder Breite',
    plate: (place) => `Fuge ${place}`,
    held: 'runde Kante: Außenseite; Arm: Fuge',
    card: (place) => `Winkel ${place}`,
    stock: 'Anschlag der Schmiege an diese Kante',
    notes: {
      use: 'Die Innenecke der Lehre an die Kante der Daube setzen, ihre runde Kante quer über die Außenseite, ihren Arm an die Fuge. Am Arm darf kein Licht durchscheinen. Beide Fugen prüfen.',
      round:
        'Auf der gerundeten Seite benutzen: dort steht die Fuge rechtwinklig zur Rundung, wie breit die Daube auch ist.',
      flat: 'Die Außenseite bleibt flach: die runde Kante liegt auf beiden Kanten der Seite auf, mit Luft in der Mitte.',
      ticks:
        'Die Striche an der runden Kante sind Breiten an der weitesten Stelle: die andere Kante der Daube liegt am Strich ihrer eigenen Breite, auch hier.',
      card: 'Für eine flache Seite die Schmiege nach der Karte einstellen: den Anschlag an die untere Kante, die Zunge an die Linie der Daubenbreite. Dann den Anschlag auf die Außenseite halten. Die Strichpunktlinie ist rechtwinklig.',
    },
    table: {
      title: 'Fugenwinkel',
      headings: (unit, places) => [
        `Breite ${unit}`,
        ...places.flatMap((place) => [place, 'je 100']),
      ],
    },
  },
  backing: {
    title: 'Rundungslehre für die Außenseite',
    plate: (place, radius) => `Rundung ${place}: Radius ${radius}`,
    edge: 'diese Kante quer auf die Außenseite',
    notes: [
      'Die Außenseite runden, bis die runde Kante von Fuge zu Fuge ohne Licht anliegt.',
      'Nahe den Enden ist sie flacher als der Kreis des Gefäßes dort, weil die Seite geneigt ist.',
    ],
  },
  hollowing: {
    title: 'Höhlungslehre für die Innenseite',
    plate: (place, radius) => `Höhlung ${place}: Radius ${radius}`,
    edge: 'diese Kante quer in die Höhlung',
    notes: {
      use: 'Die Innenseite aushöhlen, bis die runde Kante ohne Licht darin liegt, von Fuge zu Fuge oder so weit die Lehre reicht.',
      depth: (thickness) =>
        `In der Mitte des Bauches ${thickness} Holz stehen lassen; mit dem Taster prüfen, die Tiefe zeigt die Lehre nicht.`,
    },
  },
  sweep: {
    title: 'Bauchlehren, außen und innen',
    outside: 'Lehre für außen',
    inside: 'Lehre für innen',
    outsideHeld: 'gebogene Kante längs auf die Außenseite',
    insideHeld: 'gebogene Kante längs auf die Innenseite',
    stave: 'Daube',
    hoop: (name, distance) => `${germanHoop(name)}, Kante, ${distance}`,
    chime: (distance) => `Fuß der Froschfase, ${distance}`,
    groove: (distance) => `Gargelkante, ${distance}`,
    howel: (distance) => `Rand der Glättung, ${distance}`,
    notes: {
      use: 'Beide Platten ausschneiden. Die äußere auf die Mitte der Außenseite einer Daube halten, die innere auf die Mitte ihrer Innenseite, beide aufrecht, in einer Ebene durch die Achse des Gefäßes.',
      bend: 'Nach dem Biegen und Abkühlen darf nirgends Licht durchscheinen. Außen heißt Licht am Bauch zu wenig, Licht an den Enden zu viel gebogen; innen ist es umgekehrt. Berichtigen, bevor die Gargel geschnitten wird.',
      straight:
        'Die Daube eines geraden Gefäßes bleibt gerade: auch beide Kanten sind es, und zeigen Windschiefe und hohle Stellen.',
      ends: 'Die Platten sind so lang, wie das Gefäß hoch ist: ihre Enden sind die Endebenen.',
      marks:
        'Querlinien sind Höhen im Gefäß: außen Reifkanten; innen Frosch, Gargel und Glättung. Die Zahlen sind Abstände vom Ende, längs der Achse.',
    },
  },
  listing: {
    title: 'Sägelade: Anschläge für verjüngte Dauben',
    blade:
      'Sägeblatt an dieser Kante; die Marken sind die Endebenen beim ersten und zweiten Schnitt',
    first: 'Anschlag, 1. Schnitt: rohe Kante daran',
    second: 'Anschlag, 2. Schnitt: erster Schnitt daran',
    firstAway: (distance) => `1. Schnitt: ${distance} vom Blatt`,
    secondAway: (distance) => `2. Schnitt: ${distance} vom Blatt`,
    ends: (first, second) => `${first} zuerst, ${second} danach`,
    notes: {
      tilt: (angle) =>
        `Das Sägeblatt um ${angle} über die Lade neigen und mit ihm deren Kante sägen: sie ist die Linie des Blattes. Die Daube liegt mit der Außenseite, der breiteren, auf der Lade.`,
      first: (width) =>
        `Erster Schnitt: eine gerade rohe Kante, mit der Faser, an den Anschlag. Der Rohling ist mindestens ${width} breit.`,
      second:
        'Zweiter Schnitt: den Anschlag auf seine andere Linie setzen und die Daube umkehren, Ende gegen Ende, die Außenseite wieder auf der Lade: jetzt liegt der erste Schnitt am Anschlag.',
      taper: (angle, per100) =>
        `Jede Kante läuft um ${angle} (${per100} je 100) schräg zur Mittellinie der Daube; der zweite Anschlag steht doppelt so schräg zum Blatt, nach der anderen Seite.`,
      width: (width) =>
        `Gezeichnet für eine Daube, die am breiteren Ende ${width} breit ist. Für andere Breiten den Anschlag nach der Tabelle versetzen, an beiden Enden einer Lade dieser Länge.`,
    },
    table: {
      title: 'Anschlag vom Blatt, an beiden Enden der Lade',
      headings: (unit) => [
        `Breite ${unit}`,
        'Schräge',
        'Blatt',
        `erster, unten ${unit}`,
        `erster, oben ${unit}`,
        `zweiter, unten ${unit}`,
        `zweiter, oben ${unit}`,
      ],
    },
  },
  croze: {
    plate: (end) => (end ? `Gargel, ${end}` : 'Gargel'),
    title: (end) => ofEnd('Gargellehre', end),
    groove: (width, depth) => `Gargel ${width} breit, ${depth} tief ab der Glättung`,
    howel: (depth) => `Glättung, ${depth} tief`,
    foot: 'hier endet die Glättung',
    notes: {
      hold: 'Die Platte im Gefäß auf einer Linie zur Achse halten, den Haken auf dem abgelängten Ende und bündig mit der Außenseite, die Zunge in der Gargel.',
      light:
        'Richtig ist: Haken, Glättung über und unter der Gargel und Zunge liegen alle an. Haken steht ab: Gargel zu nahe am Ende. Zunge geht nicht hinein: zu weit vom Ende, oder zu schmal. Platte steht ab: Gargel zu flach.',
      compass: (radius) =>
        `Der Gargelgrund liegt ${radius} von der Achse: die Probe mit dem Zirkel entscheidet.`,
      wear: 'Aus Hartholz oder Blech machen: die Zunge ist so breit wie die Gargel, und Papier nutzt sich ab.',
    },
  },
  chime: {
    plate: (end) => (end ? `Frosch, ${end}` : 'Frosch'),
    title: (end) => ofEnd('Froschlehre', end),
    flat: (flat) => `eben, ${flat} des Endes bleiben`,
    bevel: (angle, per100) => `Fase ${angle} vom Ende, ${per100} je 100`,
    howel: 'Glättung',
    notes: {
      hold: 'Die Platte im Gefäß auf einer Linie zur Achse halten, den Haken auf dem abgelängten Ende und bündig mit der Außenseite.',
      light:
        'Richtig ist: Haken, Fase und Glättung liegen alle an. Licht an der Fase: Frosch zu tief geschnitten; Haken steht ab: noch nicht tief genug.',
      order: 'Den Frosch prüfen, bevor die Gargel geschnitten wird: der Gargelkamm läuft darauf.',
    },
  },
};
