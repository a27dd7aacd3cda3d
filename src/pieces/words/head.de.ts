/** What the drawings of heads and of their edges say, in German. */
import type { Words } from './index.js';

export const headWordsGerman: Pick<Words, 'head' | 'edge'> = {
  head: {
    title: { both: 'Boden', top: 'Boden oben', bottom: 'Boden unten' },
    boardTitle: (title, number, count) => `${title}, Stück ${number} von ${count}`,
    cant: 'Gehrer',
    board: (number, width, length) => `Stück ${number}: ${width} × ${length}`,
    diameter: (text) => `⌀ ${text}`,
    acrossDiameter: (text) => `quer zu den Stücken ${text}`,
    outerBevel: 'Ende der Außenfase, auf dieser Seite',
    innerBevel: 'Ende der Innenfase, auf der Rückseite',
    land: 'Ende des Steges',
    dowel: (diameter, length) => `Dübel ${diameter} × ${length}, in halber Dicke`,
    compass: 'Zirkelspitze',
    notes: {
      seen: 'Von außen gesehen. Der Umriss ist der Rand; die Fugen der Stücke laufen mit der Faser.',
      groove: (radius) =>
        `Den Zirkel auf ${radius} stellen, den Radius des Gargelgrundes: er geht genau sechsmal in der Gargel herum.`,
      edge: (land, depth, outer, inner) =>
        `Rand: ein Steg, ${land} dick und ${depth} tief, dann Fasen, außen ${outer} und innen ${inner} breit, vom Rand aus gemessen.`,
      land: (fromInside, thickness) =>
        `Die Mitte des Steges liegt ${fromInside} von der Innenseite eines Bodens von ${thickness} Dicke.`,
      opening: (radius, girth) =>
        `Damit der Boden hineingeht, muss sich der Frosch im Radius um ${radius}, im Umfang um ${girth} öffnen: die Reifen dieses Endes bis zum Halsreif abnehmen.`,
      allowance: (allowance) =>
        `Die Länge eines Stückes ist seine längste Sehne und ${allowance} Zugabe; Breiten sind Fertigmaße.`,
      crossGrain: (allowance) =>
        `Quer zu den Stücken ist der Boden um ${allowance} größer als längs, für das Quellen.`,
      blanks:
        'In die Fugen darf Schilf gelegt werden; Leim berührt nichts, was getrunken wird, wenn die örtlichen Lebensmittelvorschriften es nicht erlauben.',
    },
    boardNotes: {
      seen: 'Von außen gesehen, wie im Boden: die obere Kante zeigt zur höheren Nummer. Die Faser läuft längs des Stückes.',
      blank:
        'Die schmalen Linien außerhalb des Umrisses sind die Enden des Rohlings, der zuerst gesägt wird.',
      dowels: (diameter, depth) =>
        `Dübellöcher: ${diameter} weit, in diesem Stück ${depth} tief, in halber Dicke, rechtwinklig zur Fuge.`,
    },
    boards: {
      title: 'Bodenstücke',
      headings: (unit) => ['Stück', `Breite ${unit}`, `Zuschnittlänge ${unit}`, `Sehne ${unit}`],
    },
    dowels: {
      title: 'Dübel',
      headings: (unit) => ['Fuge', `von der Mitte, längs der Fuge ${unit}`],
    },
  },
  edge: {
    title: 'Bodenrand in seiner Gargel',
    titleOf: (head) => `${head}: Rand in seiner Gargel`,
    groove: (width, depth) => `Gargel ${width} breit, ${depth} tief ab der Glättung`,
    howel: (depth) => `Glättung ${depth} tief`,
    chime: (bevel, flat) => `Froschfase ${bevel} vom Ende, eben ${flat}`,
    land: (thickness, depth, fromInside) =>
      `Steg ${thickness} × ${depth}, seine Mitte ${fromInside} von der Innenseite`,
    outerBevel: (width) => `Außenfase, vom Rand ${width} breit`,
    innerBevel: (width) => `Innenfase, vom Rand ${width} breit`,
    notes: {
      section:
        'Schnitt längs der Achse des Gefäßes, in wahrer Größe, durch die Mitte einer Daube. Die Endebene steht rechtwinklig zur Achse.',
      order:
        'Erst die Froschfase, dann ringsum die Glättung, dann die Gargel; ihre Tiefe wird rechtwinklig zur Achse ab der Glättung gemessen.',
      compass: (radius) => `Der Gargelgrund liegt ${radius} von der Achse.`,
      clear: 'Der Steg geht in die Gargel und sitzt, bevor anderes Holz anstößt.',
      tools:
        'Gargelkamm und Hobel werden zum Werkstück geführt: das Fass festhalten und beide Hände hinter der Schneide lassen.',
    },
  },
};
