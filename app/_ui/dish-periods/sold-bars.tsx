import { PERIODS } from '@/lib/format/words/dish-periods';
import styles from './dish-periods.module.css';
import type { Drawn } from './periods-chart';

/** What was sold, a bar a period; the periods in which it was not on the menu say so once for each run of them. */
export function SoldBars({ facts, size, x, y, plot, step }: Drawn) {
  const { marks, last } = facts;
  const width = Math.max(3, step * 0.44);
  return (
    <>
      <path className={styles.base} d={`M${plot.x} ${y(0)}H${plot.x + plot.width}`} />
      {marks.map(
        (mark, index) =>
          mark.sold !== null && (
            <rect
              key={mark.name}
              className={index === marks.length - 1 ? styles.soldHere : styles.sold}
              x={x(index) - width / 2}
              width={width}
              y={y(mark.sold)}
              height={Math.max(0, y(0) - y(mark.sold))}
            />
          ),
      )}
      {runsOff(marks).map(({ from, to }) =>
        (to - from) * step > 96 ? (
          <text key={from} className={styles.off} x={x((from + to - 1) / 2)} y={y(0) - 6} textAnchor="middle">
            {PERIODS.notOnSale}
          </text>
        ) : null,
      )}
      {last && size.name !== 'narrow' && (
        <text className={styles.end} x={plot.x + plot.width + 8} y={y(0) - 4}>
          {`${last.sold} ${facts.countName}`}
        </text>
      )}
    </>
  );
}

function runsOff(marks: Drawn['facts']['marks']): readonly { readonly from: number; readonly to: number }[] {
  const runs: { from: number; to: number }[] = [];
  marks.forEach(({ sold }, index) => {
    if (sold !== null) return;
    const run = runs.at(-1);
    if (run && run.to === index) runs[runs.length - 1] = { from: run.from, to: index + 1 };
    else runs.push({ from: index, to: index + 1 });
  });
  return runs;
}
