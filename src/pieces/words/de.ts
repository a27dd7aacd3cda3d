/**
 * Every word on a drawing, in German. Trade words: Gargel for the groove throughout, Frosch for the stave ends beyond the
 * head, Lauf for the splay of a hoop. For the howel the trade has no settled word; it is called what it is, Glättung. The
 * head's land is its Steg.
 */
import { germanHoop } from '../../hoop-names.js';
import { decimalComma } from '../../language.js';
import { dipWordsGerman } from './dip.de.js';
import { gaugeWordsGerman } from './gauges.de.js';
import { headWordsGerman } from './head.de.js';
import { hoopWordsGerman } from './hoops.de.js';
import type { Words } from './index.js';
import { jigWordsGerman } from './jigs.de.js';
import { routerWordsGerman } from './router.de.js';
import { sectionWordsGerman } from './section.de.js';
import { settingWordsGerman } from './setting.de.js';
import { staveWordsGerman } from './stave.de.js';

export const de: Words = {
  typeset: decimalComma,
  hoopName: germanHoop,
  ends: { top: 'oben', bottom: 'unten' },
  outerFace: 'Außenseite',
  grain: 'Faser',
  joint: 'Fuge',
  perHundred: 'je 100',
  unitNames: { mm: 'mm', in: 'in' },
  caution: {
    machines:
      'Abrichte, Säge und Fräse: Schutz angebracht, Schiebestock, auf Ohren, Augen und Staub achten; die Anleitung des Herstellers und die örtlichen Vorschriften befolgen.',
    fire: 'Feuer im Fass: im Freien oder unter einem Abzug, Wasser bereit, Handschuhe; Dauben stehen unter Spannung und sind heiß. Örtliche Brandvorschriften befolgen.',
  },
  ...staveWordsGerman,
  ...headWordsGerman,
  hoops: hoopWordsGerman,
  gauges: gaugeWordsGerman,
  dip: dipWordsGerman,
  jigs: jigWordsGerman,
  section: sectionWordsGerman,
  setting: settingWordsGerman,
  router: routerWordsGerman,
};
