/**
 * Every word on a drawing, in French. Trade words: jable for the groove, peigne for the stave ends beyond the head, évasement
 * for the splay of a hoop. The howel is called gorge, as trade manuals call the hollow in which the jable is cut, though the word
 * is not settled. The head's land is its languette.
 */
import { frenchHoop } from '../../hoop-names.js';
import { frenchText } from '../../language.js';
import { dipWordsFrench } from './dip.fr.js';
import { gaugeWordsFrench } from './gauges.fr.js';
import { headWordsFrench } from './head.fr.js';
import { hoopWordsFrench } from './hoops.fr.js';
import type { Words } from './index.js';
import { jigWordsFrench } from './jigs.fr.js';
import { routerWordsFrench } from './router.fr.js';
import { sectionWordsFrench } from './section.fr.js';
import { settingWordsFrench } from './setting.fr.js';
import { staveWordsFrench } from './stave.fr.js';

export const fr: Words = {
  typeset: frenchText,
  hoopName: frenchHoop,
  ends: { top: 'haut', bottom: 'bas' },
  outerFace: 'face extérieure',
  grain: 'fil',
  joint: 'joint',
  perHundred: 'pour 100',
  unitNames: { mm: 'mm', in: 'in' },
  caution: {
    machines:
      'Dégauchisseuse, scie et fraise : protecteurs en place, poussoirs, attention aux oreilles, aux yeux et à la poussière ; suivre la notice du fabricant et les règles locales.',
    fire: 'Feu dans un fût : dehors ou sous une hotte, de l’eau à portée, des gants ; les douelles sont sous tension et chaudes. Suivre les règles locales sur le feu.',
  },
  ...staveWordsFrench,
  ...headWordsFrench,
  hoops: hoopWordsFrench,
  gauges: gaugeWordsFrench,
  dip: dipWordsFrench,
  jigs: jigWordsFrench,
  section: sectionWordsFrench,
  setting: settingWordsFrench,
  router: routerWordsFrench,
};
