/** What the view in space has to say. */

type ByEnd = Readonly<Record<'top' | 'bottom', string>>;

export interface SpaceWords extends Readonly<
  Record<
    | 'canvas'
    | 'left'
    | 'right'
    | 'up'
    | 'down'
    | 'reset'
    | 'apart'
    | 'without'
    | 'chooseOne'
    | 'staves'
    | 'hoops'
    | 'hoop'
    | 'strap'
    | 'rivets'
    | 'width'
    | 'bevel'
    | 'bevelAt'
    | 'boardWidth'
    | 'boardLength'
    | 'thick'
    | 'dowels',
    string
  >
> {
  readonly boards: ByEnd;
  readonly stave: (number: number, count: number) => string;
}
