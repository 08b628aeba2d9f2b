import { spread } from './spread';
import type { TreeFacts, TreeLeaf, TreePart } from './tree-facts';
import type { TreeSize } from './tree-size';

/** A piece of a bar. */
export interface TreeBox {
  readonly key: string;
  readonly y: number;
  readonly height: number;
  readonly isFollowed: boolean;
}

/** A name with its figure; `barY` is the middle of its piece, to which a leader runs where the label stands off it. */
export interface TreeLabel {
  readonly key: string;
  readonly name: string;
  readonly cost: number;
  readonly isFloor: boolean;
  readonly isFollowed: boolean;
  readonly y: number;
  readonly barY: number;
  /** Under the name, where what is bought has no labels of its own: the dearest of it. */
  readonly mostly: TreeLeaf | null;
}

export interface TreeLayout {
  readonly height: number;
  /** Height of the known part of the plate; what is not known is hatched below it. */
  readonly known: number;
  readonly parts: readonly TreeBox[];
  readonly leaves: readonly TreeBox[];
  readonly partLabels: readonly TreeLabel[];
  readonly leafLabels: readonly TreeLabel[];
  /** Lines of what is bought that have no label. */
  readonly folded: number;
}

const FOR_UNKNOWN = 22;
/** More parts than this are drawn as one. */
const MOST_PARTS = 16;
const WITH_MOSTLY = 38;
/** A label stands no further off its piece than this, so that a glance still finds it. */
const FARTHEST = 15;
/** What is a smaller share of the plate than this goes without a name. */
const LEAST_SHARE = 0.01;

/** Where everything stands in the picture of a cost: heights are cost, labels are spread apart beside them. */
export function treeLayout(facts: TreeFacts, size: TreeSize, followed: string | null): TreeLayout {
  const parts = foldedParts(facts.parts);
  const wanted = parts.length * size.partLabel * 2.2;
  const known = Math.max(size.least, Math.min(size.most, wanted));
  const scale = facts.total > 0 ? known / facts.total : 0;
  const height = known + (facts.unknown.length > 0 ? FOR_UNKNOWN : 0);
  const drawn = piecesOf(parts, scale);
  const isTold = (leaf: TreeLeaf) => leaf.name === followed;
  const leaves = drawn.flatMap(({ part, y, isMore }) => {
    const whole = part.leaves.reduce((sum, { cost }) => sum + Math.max(0, cost), 0);
    let at = y;
    return part.leaves
      .filter(({ cost }) => cost > 0)
      .map((leaf) => {
        // where something is made beside it, what is bought shares what is left to pay
        const tall = whole > 0 ? (leaf.cost / whole) * part.cost * scale : 0;
        const box = { key: `${part.name} ${leaf.name}`, y: at, height: tall, isFollowed: isTold(leaf), leaf, isMore };
        at += tall;
        return box;
      });
  });
  const each = size.leafLabel;
  const labelled =
    each === null
      ? []
      : labelledLeaves(
          leaves.filter(({ isMore, leaf }) => !isMore && leaf.cost >= Math.max(facts.least, LEAST_SHARE * facts.total)),
          each,
          known,
        );
  return {
    ...{ height, known },
    parts: drawn.map(({ part, y, tall }) => ({ key: part.name, y, height: tall, isFollowed: false })),
    leaves: leaves.map(({ key, y, height: tall, isFollowed }) => ({ key, y, height: tall, isFollowed })),
    partLabels: partLabels(drawn, size, known, followed),
    leafLabels: leafLabels(labelled, size, known),
    folded: leaves.length - labelled.length,
  };
}

interface Piece {
  readonly part: TreePart;
  readonly y: number;
  readonly tall: number;
  /** It stands for several parts that are too small to be drawn. */
  readonly isMore: boolean;
}

function foldedParts(parts: readonly TreePart[]): readonly (TreePart & { readonly isMore: boolean })[] {
  const whole = parts.map((part) => ({ ...part, isMore: false }));
  if (parts.length <= MOST_PARTS) return whole;
  const rest = parts.slice(MOST_PARTS - 1);
  const more = {
    name: `and ${rest.length} more`,
    cost: rest.reduce((sum, { cost }) => sum + cost, 0),
    isFloor: rest.some(({ isFloor }) => isFloor),
    leaves: rest.flatMap(({ leaves }) => leaves),
    isMore: true,
  };
  return [...whole.slice(0, MOST_PARTS - 1), more];
}

function piecesOf(parts: readonly (TreePart & { readonly isMore: boolean })[], scale: number): readonly Piece[] {
  let at = 0;
  return parts.map(({ isMore, ...part }) => {
    const piece = { part, y: at, tall: part.cost * scale, isMore };
    at += piece.tall;
    return piece;
  });
}

type Leaf = TreeBox & { readonly leaf: TreeLeaf };

/** Those that get a label: the dearest first, each as long as all labels still stand near their pieces. In the order of the bar. */
function labelledLeaves(leaves: readonly Leaf[], each: number, known: number): readonly Leaf[] {
  let chosen: readonly Leaf[] = [];
  for (const leaf of [...leaves].sort((a, b) => b.leaf.cost - a.leaf.cost)) {
    const tried = [...chosen, leaf].sort((a, b) => a.y - b.y);
    const wanted = wantedPlaces(tried, each);
    const places = placesOf(tried, each, known);
    if (tried.length * each > known) break;
    if (places.every((place, index) => Math.abs(place - (wanted[index] ?? 0)) <= FARTHEST)) chosen = tried;
  }
  return chosen;
}

/** At the top of its piece, where the eye looks for a name. */
function wantedPlaces(leaves: readonly TreeBox[], each: number): readonly number[] {
  return leaves.map(({ y, height }) => y + Math.min(height, each) / 2);
}

function placesOf(leaves: readonly TreeBox[], each: number, known: number): readonly number[] {
  return spread(
    wantedPlaces(leaves, each),
    leaves.map(() => each),
    0,
    known,
  );
}

function partLabels(
  pieces: readonly Piece[],
  size: TreeSize,
  known: number,
  followed: string | null,
): readonly TreeLabel[] {
  const isAlone = size.leafLabel === null;
  const mostly = pieces.map(({ part, tall, isMore }) => {
    if (!isAlone || isMore || tall < WITH_MOSTLY || part.leaves.length === 0) return null;
    const [first] = part.leaves;
    if (first?.name === part.name) return null;
    return part.leaves.find(({ name, cost }) => name === followed && cost >= (first?.cost ?? 0) / 2) ?? first ?? null;
  });
  const heights = mostly.map((leaf) => (leaf === null ? size.partLabel : WITH_MOSTLY));
  // a tall piece has its name at its top, where the eye looks for it
  const wanted = pieces.map(({ y, tall }, index) => y + Math.min(tall, heights[index] ?? 0) / 2);
  const places = spread(
    wanted,
    heights,
    0,
    Math.max(
      known,
      heights.reduce((sum, each) => sum + each, 0),
    ),
  );
  return pieces.map(({ part, y, tall }, index) => ({
    ...{ key: part.name, name: part.name, cost: part.cost, isFloor: part.isFloor, isFollowed: false },
    y: (places[index] ?? 0) - ((heights[index] ?? 0) - size.partLabel) / 2,
    barY: y + Math.min(tall, size.partLabel) / 2,
    mostly: mostly[index] ?? null,
  }));
}

function leafLabels(leaves: readonly Leaf[], size: TreeSize, known: number): readonly TreeLabel[] {
  const each = size.leafLabel ?? 0;
  const wanted = wantedPlaces(leaves, each);
  const places = placesOf(leaves, each, known);
  return leaves.map(({ key, isFollowed, leaf }, index) => ({
    ...{ key, name: leaf.name, cost: leaf.cost, isFloor: false, isFollowed },
    ...{ y: places[index] ?? 0, barY: wanted[index] ?? 0, mostly: null },
  }));
}
