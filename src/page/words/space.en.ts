/** The view in space in English. */
import type { SpaceWords } from './space.js';

export const space: SpaceWords = {
  canvas:
    'The vessel in space. Arrow keys turn it, plus and minus bring it nearer and further, 0 puts it back. The list below chooses a part.',
  left: 'Turn to the left',
  right: 'Turn to the right',
  up: 'Tilt upwards',
  down: 'Tilt downwards',
  reset: 'As at first',
  apart: 'Taken apart along the axis',
  without: 'This browser cannot show the vessel in space (it lacks WebGL 2). Here is its section.',
  chooseOne: 'Touch a part, or choose it in the list, to see its drawing and numbers.',
  staves: 'Staves',
  hoops: 'Hoops',
  hoop: 'Hoop',
  strap: 'Strap',
  rivets: 'Rivets in the lap',
  width: 'Width',
  bevel: 'Joint bevel at the widest place',
  bevelAt: 'Joint bevel',
  boardWidth: 'Board, wide',
  boardLength: 'Blank, long',
  thick: 'Thick',
  dowels: 'Dowels in its joints',
  boards: { top: 'Boards of the top head', bottom: 'Boards of the bottom head' },
  stave: (number, count) => `Stave ${number} of ${count}`,
};
