/** The view in space in German. */
import type { SpaceWords } from './space.js';

export const spaceGerman: SpaceWords = {
  canvas:
    'Das Gefäß im Raum. Pfeiltasten drehen es, Plus und Minus holen es näher und weiter, 0 stellt es zurück. Die Liste darunter wählt ein Teil.',
  left: 'Nach links drehen',
  right: 'Nach rechts drehen',
  up: 'Nach oben kippen',
  down: 'Nach unten kippen',
  reset: 'Wie am Anfang',
  apart: 'Entlang der Achse zerlegt',
  without:
    'Dieser Browser kann das Gefäß nicht im Raum zeigen (ihm fehlt WebGL 2). Hier ist sein Schnitt.',
  chooseOne: 'Ein Teil antippen oder in der Liste wählen: dann stehen hier Zeichnung und Zahlen.',
  staves: 'Dauben',
  hoops: 'Reifen',
  hoop: 'Reif',
  strap: 'Band',
  rivets: 'Nieten in der Überlappung',
  width: 'Breite',
  bevel: 'Fugenschräge an der weitesten Stelle',
  bevelAt: 'Fugenschräge',
  boardWidth: 'Stück, breit',
  boardLength: 'Rohling, lang',
  thick: 'Dick',
  dowels: 'Dübel in seinen Fugen',
  boards: { top: 'Stücke des oberen Bodens', bottom: 'Stücke des unteren Bodens' },
  stave: (number, count) => `Daube ${number} von ${count}`,
};
