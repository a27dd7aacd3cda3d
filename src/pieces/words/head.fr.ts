/** What the drawings of heads and of their edges say, in French. */
import type { Words } from './index.js';

export const headWordsFrench: Pick<Words, 'head' | 'edge'> = {
  head: {
    title: { both: 'Fond', top: 'Fond du haut', bottom: 'Fond du bas' },
    boardTitle: (title, number, count) => `${title}, pièce ${number} sur ${count}`,
    cant: 'chanteau',
    board: (number, width, length) => `pièce ${number} : ${width} × ${length}`,
    diameter: (text) => `⌀ ${text}`,
    acrossDiameter: (text) => `en travers des pièces ${text}`,
    outerBevel: 'fin du chanfrein extérieur, sur cette face',
    innerBevel: 'fin du chanfrein intérieur, sur l’autre face',
    land: 'fin de la languette',
    dowel: (diameter, length) => `goujon ${diameter} × ${length}, à mi-épaisseur`,
    compass: 'pointe du compas',
    notes: {
      seen: 'Vu de l’extérieur. Le contour est le bord ; les joints des pièces suivent le fil.',
      groove: (radius) =>
        `Régler un compas à ${radius}, le rayon au fond du jable : il en fait le tour en six pas exactement.`,
      edge: (land, depth, outer, inner) =>
        `Bord : une languette épaisse de ${land} et profonde de ${depth}, puis des chanfreins, larges de ${outer} dehors et de ${inner} dedans, mesurés du bord.`,
      land: (fromInside, thickness) =>
        `Le milieu de la languette est à ${fromInside} de la face intérieure d’un fond épais de ${thickness}.`,
      opening: (radius, girth) =>
        `Pour laisser entrer le fond, le peigne doit s’ouvrir de ${radius} en rayon, de ${girth} en périmètre : ôter les cercles de ce bout jusqu’à celui de collet.`,
      allowance: (allowance) =>
        `La longueur d’une pièce est sa plus longue corde et ${allowance} de plus ; les largeurs sont finies.`,
      crossGrain: (allowance) =>
        `En travers des pièces, le fond est plus grand de ${allowance} que dans leur sens, pour le gonflement.`,
      blanks:
        'On peut poser du jonc dans les joints ; aucune colle ne touche ce qui sera bu, sauf si les règles alimentaires locales le permettent.',
    },
    boardNotes: {
      seen: 'Vu de l’extérieur, comme dans le fond : le bord du haut est vers le numéro plus grand. Le fil suit la pièce.',
      blank: 'Les lignes fines hors du contour sont les bouts de l’ébauche à scier d’abord.',
      dowels: (diameter, depth) =>
        `Trous des goujons : larges de ${diameter}, profonds de ${depth} dans cette pièce, à mi-épaisseur, d’équerre au joint.`,
    },
    boards: {
      title: 'Pièces de fond',
      headings: (unit) => ['pièce', `largeur ${unit}`, `longueur à scier ${unit}`, `corde ${unit}`],
    },
    dowels: {
      title: 'Goujons',
      headings: (unit) => ['joint', `du milieu, le long du joint ${unit}`],
    },
  },
  edge: {
    title: 'Bord du fond dans son jable',
    titleOf: (head) => `${head} : bord dans son jable`,
    groove: (width, depth) => `jable large de ${width}, profond de ${depth} depuis la gorge`,
    howel: (depth) => `gorge profonde de ${depth}`,
    chime: (bevel, flat) => `chanfrein du peigne ${bevel} du bout, plat ${flat}`,
    land: (thickness, depth, fromInside) =>
      `languette ${thickness} × ${depth}, son milieu à ${fromInside} de la face intérieure`,
    outerBevel: (width) => `chanfrein extérieur, large de ${width} du bord`,
    innerBevel: (width) => `chanfrein intérieur, large de ${width} du bord`,
    notes: {
      section:
        'Coupe le long de l’axe du récipient, en vraie grandeur, au milieu d’une douelle. Le plan du bout est d’équerre à l’axe.',
      order:
        'D’abord le chanfrein du peigne, puis la gorge tout autour, puis le jable ; sa profondeur se mesure d’équerre à l’axe depuis la gorge.',
      compass: (radius) => `Le fond du jable est à ${radius} de l’axe.`,
      clear: 'La languette entre dans le jable et s’y loge avant que d’autre bois ne touche.',
      tools:
        'Le jabloir et le rabot vont vers la pièce : bien tenir le fût et garder les deux mains derrière le tranchant.',
    },
  },
};
