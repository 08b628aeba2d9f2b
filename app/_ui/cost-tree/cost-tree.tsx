import type { Purse } from '@/lib/format/money';
import { cutName, mostlyWords, plateWords, TREE } from '@/lib/format/words/cost-tree';
import styles from './cost-tree.module.css';
import type { TreeFacts } from './tree-facts';
import { type TreeLabel, type TreeLayout, treeLayout } from './tree-layout';
import { TREE_SIZES, type TreeSize } from './tree-size';

/** The cost of a portion as three upright bars, drawn for three widths, of which the place shows the one that fits. */
export function CostTree({ facts, followed, purse }: { facts: TreeFacts; followed: string | null; purse: Purse }) {
  return (
    <div className={styles.place}>
      {TREE_SIZES.map((size) => (
        <Drawing
          key={size.name}
          facts={facts}
          size={size}
          layout={treeLayout(facts, size, followed)}
          followed={followed}
          purse={purse}
        />
      ))}
    </div>
  );
}

function Drawing({
  facts,
  size,
  layout,
  followed,
  purse,
}: {
  facts: TreeFacts;
  size: TreeSize;
  layout: TreeLayout;
  followed: string | null;
  purse: Purse;
}) {
  const [plate, parts, leaves] = size.bars;
  const { barWidth } = size;
  const isNarrow = size.leafLabel === null;
  const hatch = `tree-hatch-${size.name}`;
  const ruled = layout.parts.slice(1).map(({ y }) => y);
  const barOf = (x: number, boxes: TreeLayout['parts'], className: string | undefined) =>
    boxes.map(({ key, y, height, isFollowed }) => (
      <rect
        key={key}
        className={isFollowed ? styles.followed : className}
        x={x}
        width={barWidth}
        y={y}
        height={Math.max(0.6, height - (height > 3 ? 1 : 0))}
      />
    ));
  return (
    <svg
      className={`${styles.drawing} ${styles[size.name]}`}
      width={size.width}
      height={layout.height + 4}
      viewBox={`0 -2 ${size.width} ${layout.height + 4}`}
      role="img"
      aria-label={TREE.name}
    >
      <defs>
        <pattern id={hatch} width="4" height="4" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
          <line className={styles.hatch} x1="0" y1="0" x2="0" y2="4" />
        </pattern>
      </defs>
      {!isNarrow && (
        <path className={styles.rule} d={ruled.map((y) => `M${plate + barWidth} ${y}H${size.width}`).join('')} />
      )}
      {!isNarrow && <rect className={styles.plate} x={plate} width={barWidth} y={0} height={layout.known} />}
      {barOf(parts, layout.parts, styles.part)}
      {barOf(leaves, layout.leaves, styles.leaf)}
      {facts.unknown.length > 0 && (
        <>
          {[...new Set(isNarrow ? [parts, leaves] : size.bars)].map((x) => (
            <rect key={x} fill={`url(#${hatch})`} x={x} width={barWidth} y={layout.known + 2} height={20} />
          ))}
          <text className={styles.note} x={parts + barWidth + (isNarrow ? 24 : 10)} y={layout.known + 17}>
            {cutName(facts.unknown.join(', '), size.figures[0] - parts - 110, size.leafLetter)}
          </text>
          <text className={styles.note} x={size.figures[0]} y={layout.known + 17} textAnchor="end">
            {TREE.notKnown}
          </text>
        </>
      )}
      {!isNarrow && (
        <>
          <text className={styles.plateName} x={barWidth + 10} y={16}>
            {cutName(facts.name, parts - barWidth - 18, 10)}
          </text>
          <text className={styles.plateCost} x={barWidth + 10} y={37}>
            {plateWords(facts.total, facts.isFloor, purse)}
          </text>
        </>
      )}
      <Labels
        labels={layout.partLabels}
        bar={isNarrow ? leaves + barWidth : parts + barWidth}
        end={size.figures[0]}
        className={styles.partName}
        letter={size.partLetter}
        followed={followed}
        purse={purse}
      />
      <Labels
        labels={layout.leafLabels}
        bar={leaves + barWidth}
        end={size.figures[1]}
        className={styles.leafName}
        letter={size.leafLetter}
        followed={followed}
        purse={purse}
      />
    </svg>
  );
}

const LEADER = 12;
const FIGURE = 62;

/** Names beside a bar and their figures at the end of the column; a leader runs to what stands off its piece. */
function Labels({
  labels,
  bar,
  end,
  className,
  letter,
  followed,
  purse,
}: {
  labels: readonly TreeLabel[];
  bar: number;
  end: number;
  className: string | undefined;
  letter: number;
  followed: string | null;
  purse: Purse;
}) {
  const x = bar + LEADER;
  return labels.map((label) => (
    <g key={label.key} className={label.isFollowed ? styles.told : undefined}>
      {Math.abs(label.y - label.barY) > 3 && (
        <path className={styles.leader} d={`M${bar + 1} ${label.barY}L${x - 2} ${label.y}`} />
      )}
      <text className={className} x={x} y={label.y + 5}>
        {cutName(label.name, end - FIGURE - x, letter)}
        <title>{label.name}</title>
      </text>
      <text className={styles.figure} x={end} y={label.y + 5} textAnchor="end">
        {plateWords(label.cost, label.isFloor, purse)}
      </text>
      {label.mostly && (
        <text className={label.mostly.name === followed ? styles.mostlyTold : styles.mostly} x={x} y={label.y + 21}>
          {cutName(mostlyWords(label.mostly.name, label.mostly.cost, purse), end - x - 20, 6.4)}
        </text>
      )}
    </g>
  ));
}
