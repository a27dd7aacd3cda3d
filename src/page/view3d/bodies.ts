/** Bodies for the screen: each part's surface and its edges, placed in the vessel, moved apart and pulled out. */
import {
  BufferAttribute,
  BufferGeometry,
  Group,
  LineBasicMaterial,
  LineSegments,
  Mesh,
  MeshLambertMaterial,
} from 'three';
import type { Vessel } from '../../index.js';
import { shiftOf } from './apart.js';
import type { Mesh as Surface } from './mesh/mesh.js';
import { keyOfPart, type Part } from './parts.js';
import type { Shades } from './shades.js';

/** How far the chosen body stands out, as a share of the vessel's height. */
const pulled = 0.09;

interface Body {
  readonly part: Part;
  readonly key: string;
  readonly mesh: Mesh<BufferGeometry, MeshLambertMaterial>;
}

export class Bodies {
  readonly group = new Group();
  private bodies: Body[] = [];
  private shapes: BufferGeometry[] = [];
  private readonly wood = shaded();
  private readonly steel = shaded();
  private readonly chosen = shaded();
  private readonly line = new LineBasicMaterial();

  constructor(private vessel: Vessel) {}

  /** Other bodies in place of these. */
  show(vessel: Vessel, parts: readonly Part[]): void {
    this.vessel = vessel;
    this.shapes.forEach((shape) => shape.dispose());
    this.shapes = [];
    this.group.clear();
    const known = new Map<Surface, readonly [BufferGeometry, BufferGeometry]>();
    this.bodies = parts.map((part) => {
      const [shape, edges] = known.get(part.mesh) ?? this.shapesOf(part.mesh);
      known.set(part.mesh, [shape, edges]);
      const mesh = new Mesh(shape, this.materialOf(part));
      mesh.add(new LineSegments(edges, this.line));
      mesh.rotation.z = part.azimuth;
      this.group.add(mesh);
      return { part, key: keyOfPart(part.id), mesh };
    });
  }

  /** `share` of the way apart, and one pulled out. */
  place(share: number, chosenKey: string | null): void {
    const { height } = this.vessel.spec;
    for (const { part, key, mesh } of this.bodies) {
      const isChosen = key === chosenKey;
      const out = isChosen ? pulled * height : 0;
      const along = shiftOf(this.vessel, part.id, share);
      const isStave = part.id.kind === 'stave';
      const way = isStave ? 0 : Math.sign(shiftOf(this.vessel, part.id, 1)) * out;
      mesh.position.set(0, 0, along + way);
      if (isStave) mesh.position.set(out * Math.cos(part.azimuth), out * Math.sin(part.azimuth), 0);
      mesh.material = isChosen ? this.chosen : this.materialOf(part);
    }
  }

  paint({ wood, steel, chosen, ink }: Shades): void {
    this.wood.color.set(wood);
    this.steel.color.set(steel);
    this.chosen.color.set(chosen);
    this.line.color.set(ink);
  }

  get meshes(): readonly Mesh[] {
    return this.bodies.map(({ mesh }) => mesh);
  }

  partOf(object: object): Part | null {
    return this.bodies.find(({ mesh }) => mesh === object)?.part ?? null;
  }

  dispose(): void {
    this.shapes.forEach((shape) => shape.dispose());
    [this.wood, this.steel, this.chosen, this.line].forEach((material) => material.dispose());
  }

  private materialOf({ id }: Part): MeshLambertMaterial {
    return id.kind === 'hoop' ? this.steel : this.wood;
  }

  private shapesOf({
    positions,
    indices,
    edges,
  }: Surface): readonly [BufferGeometry, BufferGeometry] {
    const shape = new BufferGeometry();
    shape.setAttribute('position', new BufferAttribute(positions, 3));
    shape.setIndex(new BufferAttribute(indices, 1));
    shape.computeVertexNormals();
    const lines = new BufferGeometry();
    lines.setAttribute('position', new BufferAttribute(edges, 3));
    this.shapes.push(shape, lines);
    return [shape, lines];
  }
}

/** Pushed back a little, so that edges lie on top. */
function shaded(): MeshLambertMaterial {
  return new MeshLambertMaterial({
    polygonOffset: true,
    polygonOffsetFactor: 1,
    polygonOffsetUnits: 1,
  });
}
