import { PERIODS } from '@/lib/format/words/dish-periods';
import styles from './dish-periods.module.css';
import type { Drawn } from './periods-chart';

/** Price and plate cost as steps, what is between them as an upright stroke a period; menu changes marked over the plot. */
export function MoneyMarks({ facts, size, x, y, plot, step }: Drawn) {
  const { marks, last } = facts;
  const half = step / 2;
  const steps = (of: 'price' | 'cost') => {
    let path = '';
    let isOpen = false;
    marks.forEach((mark, index) => {
      const value = mark[of];
      if (value === null) {
        isOpen = false;
        return;
      }
      path += `${isOpen ? 'L' : 'M'}${x(index) - half} ${y(value)}H${x(index) + half}`;
      isOpen = true;
    });
    return path;
  };
  const ends = size.name === 'narrow' || !last ? [] : endLabels(facts, y);
  return (
    <>
      <path className={styles.base} d={`M${plot.x} ${y(0)}H${plot.x + plot.width}`} />
      {marks.map(
        (mark, index) =>
          mark.price !== null &&
          mark.cost !== null && (
            <rect
              key={mark.name}
              className={mark.price < mark.cost ? styles.lost : styles.left}
              x={x(index) - half * 0.44}
              width={half * 0.88}
              y={y(Math.max(mark.price, mark.cost))}
              height={Math.abs(y(mark.cost) - y(mark.price))}
            />
          ),
      )}
      <path className={styles.cost} d={steps('cost')} />
      <path className={styles.price} d={steps('price')} />
      {marks.map(
        (mark, index) =>
          mark.events.length > 0 && (
            <g key={mark.name} className={styles.event}>
              <path d={`M${x(index) - half} ${plot.y - 4}V${y(0)}`} />
              <path className={styles.flag} d={`M${x(index) - half} ${plot.y - 10}l4 4 -4 4 -4 -4z`} />
              <title>{`${mark.name}: ${mark.events.join('; ')}`}</title>
            </g>
          ),
      )}
      {ends.map(({ text, at, y: height }) => (
        <text
          key={text}
          className={at === 'leaves' ? styles.endFaint : styles.end}
          x={plot.x + plot.width + 8}
          y={height}
        >
          {text}
        </text>
      ))}
    </>
  );
}

const LINE = 16;

/** Names and figures at the right end, pushed apart where they would touch. */
function endLabels({ last, marks }: Drawn['facts'], y: Drawn['y']) {
  const mark = last ? marks[last.at] : undefined;
  if (!last || !mark) return [];
  const between = mark.price !== null && mark.cost !== null ? (mark.price + mark.cost) / 2 : null;
  const wanted = [
    { at: 'price', text: `${PERIODS.price} ${last.price ?? ''}`, value: mark.price },
    { at: 'leaves', text: `${PERIODS.leaves} ${last.leaves ?? ''}`, value: between },
    { at: 'cost', text: `${PERIODS.cost} ${last.cost ?? ''}`, value: mark.cost },
  ].flatMap((label) => (label.value === null ? [] : [{ ...label, y: y(label.value) + 4.5 }]));
  let above = Number.NEGATIVE_INFINITY;
  return [...wanted]
    .sort((a, b) => a.y - b.y)
    .map((label) => {
      above = Math.max(label.y, above + LINE);
      return { ...label, y: above };
    });
}
