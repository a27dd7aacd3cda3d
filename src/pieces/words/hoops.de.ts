/** What the sheets of hoops say, in German. */
import { germanHoop } from '../../hoop-names.js';
import type { hoopWords } from './hoops.en.js';

export const hoopWordsGerman: typeof hoopWords = {
  title: 'Reifen',
  strap: (number, name, ends, pieces, section) =>
    `${number} · ${germanHoop(name)}, ${ends}: ${pieces === 1 ? '1 Band' : `${pieces} Bänder`} ${section}`,
  and: ' und ',
  upperEdge: (splay, per100) => `obere Kante: die lange, ${splay} länger (${per100} je 100)`,
  straight: 'kein Lauf: beide Kanten gleich',
  driving: (driving) => `${driving} knapper, zum Antreiben`,
  lap: (lap) => `Überlappung ${lap}`,
  holes: (distance) => `Loch zu seinem Loch ${distance}`,
  cut: (length) => `rechtwinklig auf ${length} schneiden`,
  kinds: {
    end: 'Setzreif, nahe jedem Ende',
    quarter: 'Arbeitsreif, am Hals',
    bilge: 'Arbeitsreif, über dem Bauch',
    top: 'Setzreif, nahe dem oberen Ende',
    middle: 'Arbeitsreif, Mitte',
    bottom: 'Arbeitsreif, nahe dem unteren Ende',
  },
  notes: {
    measured:
      'Ein Reif wird nach dem kleineren Umfang bemessen, den er deckt. Zuschnittlänge: dieser Umfang in der Mitte der Banddicke und die Überlappung, weniger dem, was das Antreiben aufnimmt. Nahe Kante: die zu dem Ende hin, von dem sein Abstand zählt.',
    pairs:
      'Jedes Loch mit seinem eigenen am anderen Ende vernieten: das äußerste des einen Endes trifft das innerste des anderen.',
    splay:
      'Lauf: nur die lange Kante hämmern, gleichmäßig von Ende zu Ende, bis das Band an seiner Lauflehre anliegt. Die kurze Kante behält ihre Länge.',
    plain:
      'Ein Reif ohne Schräge ist ein gerader Streifen, auch wenn er aus Blech geschnitten wird.',
    rivets: (play) =>
      `Nieten nach üblicher Praxis, ohne Quelle: etwa zweieinhalbmal so dick wie das Band, Löcher ${play} weiter, zwei in der Überlappung, in einem breiten Band drei. Weicher Stahl, kalt geschlagen.`,
    driving: (percent, travel) =>
      `Antreiben nach üblicher Praxis, ohne Quelle: ${percent} % des Umfangs, nie mehr, als die Schräge auf ${travel} gewinnt. Mit Hammer und Setzhammer rundum treiben, jedes Mal nur wenig.`,
    waste: (percent) =>
      `Einzukaufender Stahl: ${percent} % mehr für das Ablängen und Reste (übliche Praxis, ohne Quelle). Masse mit 7850 kg je m³.`,
    working:
      'Setz- und Arbeitsreifen: Innenumfang bei geschlossenen Fugen, in üblichen Höhen, ohne Quelle. „Flach“: der Umfang über Dauben, die noch nicht gerundet sind.',
    steel:
      'Bandkanten schneiden, und Reifen unter Spannung können springen: Handschuhe und Augenschutz, niemand in der Flucht des Reifens; alle Kanten entgraten.',
    broken:
      'Unterbrochene Ansicht: beide Enden in wahrer Größe, die Mitte ist weggelassen. Die Zahl gibt die Schnittlänge, nicht das Bild; die Datei für die Fräse enthält das ganze Band.',
  },
  tables: {
    girths: {
      title: 'Umfänge und Lauf',
      headings: (unit) => [
        'Nr.',
        'Reif',
        'Ende',
        `naher Umfang ${unit}`,
        `ferner Umfang ${unit}`,
        'Schräge',
        `Lauf ${unit}`,
        'je 100',
      ],
    },
    straps: {
      title: 'Zuzuschneidende Bänder',
      headings: (unit, massUnit) => [
        'Nr.',
        'Stück',
        `Länge ${unit}`,
        `Breite × Dicke ${unit}`,
        `Überlappung ${unit}`,
        `Antreiben ${unit}`,
        `Nieten ${unit}`,
        `Löcher von jedem Ende ${unit}`,
        `Masse je Stück ${massUnit}`,
      ],
    },
    rivets: (count, diameter) => `${count} zu ⌀ ${diameter}`,
    noRivets: 'keine: schweißen',
    buy: {
      title: 'Einzukaufender Stahl',
      headings: (unit, massUnit) => [
        `Breite × Dicke ${unit}`,
        'Stück',
        `Länge zusammen ${unit}`,
        `mit Verschnitt ${unit}`,
        `Masse ${massUnit}`,
      ],
    },
    working: {
      title: 'Setz- und Arbeitsreifen',
      headings: (unit) => [
        'Reif',
        `unter dem oberen Ende ${unit}`,
        `Innenumfang ${unit}`,
        `flach ${unit}`,
        `Innendurchmesser ${unit}`,
      ],
    },
  },
  sheet: {
    title: (number, name) => `Reif ${number}, ${name}, aus Blech geschnitten`,
    short: (radius) => `kurze Kante: Radius ${radius}`,
    long: (radius) => `lange Kante: Radius ${radius}`,
    sweep: (angle) => `Öffnungswinkel ${angle}`,
    notes: {
      broken:
        'Unterbrochene Ansicht: beide Enden in wahrer Größe, jedes aufrecht gestellt; was dazwischen liegt, ist weggelassen. Die Kanten nach den Radien reißen; die Datei für die Fräse enthält den ganzen Reif.',
      use: (pieces) =>
        `Statt des Bandes ${pieces} solche aus Blech schneiden: sie brauchen kein Hämmern. Die kurze Kante kommt an den engeren Umfang.`,
      strike: (short, long) =>
        `Beide Kanten mit dem Stangenzirkel aus einem Punkt reißen: eine Latte mit einem Nagel und zwei Bleistiftlöchern, ${short} und ${long} vom Nagel.`,
      mark: (chord, rise) =>
        `Probe: die Enden der kurzen Kante liegen in gerader Linie ${chord} auseinander, und ihre Mitte steht ${rise} von dieser Linie ab.`,
      overlap: (overlap) =>
        `In der Mitte der Breite überdecken sich die Enden um ${overlap}: die Überlappung und was das Antreiben aufnimmt. Die schmalen Linien zeigen, wie weit.`,
      edges: 'Stahlkanten schneiden: vor dem Biegen ringsum entgraten.',
    },
  },
  splay: {
    title: 'Lauflehre',
    name: (number, name) => `${number} · ${germanHoop(name)}`,
    short: 'runde Kante: in die Höhlung der kurzen Bandkante',
    bench: 'Fuß auf die Bank, schräges Ende an den Reif',
    slope: (angle, per100) => `Schräge ${angle}, ${per100} je 100`,
    notes: {
      curve:
        'Beim Hämmern: das Band flach auf Amboss oder Bank legen. Seine kurze Kante wird hohl; der Lauf ist erreicht, wenn die runde Kante der Lehre ohne Licht in diese Höhlung passt, am ganzen Band.',
      standing:
        'Nach dem Vernieten: den Reif mit der langen Kante auf eine ebene Bank stellen und die Lehre außen danebensetzen. Das schräge Ende muss am Band anliegen; Licht am Fuß heißt zu wenig Lauf, Licht oben zu viel.',
      rise: 'Der Stich ist das, was die runde Kante über die ganze Lehre von einer geraden absteht.',
    },
    table: {
      title: 'Lauf',
      headings: (unit) => [
        'Nr.',
        'Reif',
        'Schräge',
        'Schräge je 100',
        'Lauf je 100',
        `Radius ${unit}`,
        `Lehre lang ${unit}`,
        `Stich ${unit}`,
      ],
    },
  },
};
