/** What the compass card and the dowel jig say, in German. */
import type { jigWords } from './jigs.en.js';

export const jigWordsGerman: typeof jigWords = {
  compass: {
    title: { both: 'Zirkelkarte', top: 'Zirkelkarte, oben', bottom: 'Zirkelkarte, unten' },
    point: 'ein Schenkel hier',
    zero: (radius) => `anderer auf 0: ${radius}, Gargelradius`,
    wide: (degrees) => `1 % zu weit: sechs Schritte laufen ${degrees} über`,
    notes: {
      use: (radius) =>
        `Den Zirkel auf die Karte legen, einen Schenkel auf das Kreuz, den anderen auf die Linie 0: er ist auf ${radius} offen, von der Achse bis zum Gargelgrund.`,
      step: 'Im Gargelgrund herumgehen, leicht, Punkt für Punkt auf einer Linie. Sechs Schritte enden, wo sie begannen.',
      scale: (unit) =>
        `Die Teilung neben 0 sagt in ${unit}, wie viel weiter oder enger der Zirkel steht.`,
      miss: 'Läuft der sechste Schritt über den ersten Punkt hinaus, so ist die Gargel kleiner als gezeichnet; endet er davor, so ist sie größer. Den Fehler längs der Gargel messen und in der Tabelle suchen.',
      head: 'Den Boden nach der Gargel machen, die da ist. Die Karte in wahrer Größe drucken und zuerst ihr Quadrat messen.',
    },
    table: {
      title: 'Was ein Fehler bedeutet',
      headings: (unit) => [
        'sechster Schritt',
        `Fehler ${unit}`,
        `Radius der Gargel ${unit}`,
        `Durchmesser des Bodens ${unit}`,
      ],
      past: 'läuft über',
      short: 'endet davor',
      meets: 'trifft',
    },
  },
  dowel: {
    title: {
      both: 'Dübellehre für alle Fugen eines Bodens',
      top: 'Dübellehre für alle Fugen des oberen Bodens',
      bottom: 'Dübellehre für alle Fugen des unteren Bodens',
    },
    hole: (joints, x) => `Fuge ${joints}: ${x}`,
    outer: 'diese Kante bündig mit der Außenseite',
    inner: 'Innenseite der Stücke',
    middle: 'Mitte der Stücke',
    notes: {
      hold: 'Die Lehre auf die Fuge eines Stückes spannen, ihre Mittellinie auf die Mitte des Bodens, die bezeichnete Kante bündig mit der Seite, die außen sein wird. So werden beide Stücke einer Fuge gebohrt, und ihre Löcher treffen sich.',
      middle:
        'Die Stücke wie im Boden zusammenlegen, Mitten auf einer Höhe, und zuerst die Mittellinie über alle reißen; die Fugen von der untersten an nummerieren.',
      which:
        'Nur die Löcher bohren, die die Nummer der Fuge tragen. Die Stellen sind beiderseits der Mitte gleich: die Lehre darf umgekehrt werden.',
      rows: 'Es sind mehrere Lehren, weil die Löcher dieser Fugen in einer ineinanderliefen.',
      depth: (diameter, depth) =>
        `${diameter} weit und ${depth} tief bohren, rechtwinklig zur Fuge; einen Anschlag auf den Bohrer setzen.`,
      make: (thickness) =>
        `Die Lehre aus Hartholz oder Stahl machen, ${thickness} dick oder mehr, damit sie den Bohrer führt; eine Leiste an der bezeichneten Kante findet die Seite.`,
      caution:
        'Stück und Lehre vor dem Bohren festspannen, Hände aus der Richtung des Bohrers, die Anleitung des Herstellers und die örtlichen Vorschriften befolgen.',
    },
    table: {
      title: 'Löcher jeder Fuge',
      headings: (unit) => ['Fuge', `von der Mitte ${unit}`],
    },
  },
};
