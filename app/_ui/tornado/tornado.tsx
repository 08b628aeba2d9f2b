import styles from './tornado.module.css';

/** One ingredient moved by its own spread: what the period would have left more or less. Places are fractions of the axis. */
export interface TornadoRow {
  readonly item: string;
  /** What it cost, from the least to the most: 10.60 to 15.90 a kg. */
  readonly prices: string;
  /** At its dearest: below zero. */
  readonly dear: TornadoEnd;
  /** At its cheapest. */
  readonly spare: TornadoEnd;
}

export interface TornadoEnd {
  readonly at: number;
  readonly text: string;
  readonly tone: 'dear' | 'spare' | 'plain';
}

export interface TornadoFacts {
  readonly caption: string;
  readonly heads: readonly [item: string, prices: string, dear: string, picture: string, spare: string];
  readonly rows: readonly TornadoRow[];
  /** Where nothing would have changed. */
  readonly zero: number;
  readonly note: string;
}

const at = (place: number): string => `${(place * 100).toFixed(3)}%`;

/** What each ingredient's own spread is worth, the widest first: the bar to the left at its dearest, to the right at its cheapest. */
export function Tornado({ facts: { caption, heads, rows, zero, note } }: { facts: TornadoFacts }) {
  return (
    <div>
      <table className={styles.table}>
        <caption>{caption}</caption>
        <thead>
          <tr>
            <th scope="col">{heads[0]}</th>
            <th scope="col" className={styles.fold}>
              {heads[1]}
            </th>
            <th scope="col" className={styles.number}>
              {heads[2]}
            </th>
            <th scope="col" className={styles.picture}>
              {heads[3]}
            </th>
            <th scope="col" className={styles.number}>
              {heads[4]}
            </th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={row.item}>
              <th scope="row" className={styles.item}>
                {row.item}
              </th>
              <td className={styles.fold}>{row.prices}</td>
              <td className={`${styles.number} ${styles[`${row.dear.tone}Text`] ?? ''}`}>{row.dear.text}</td>
              <td className={styles.picture}>
                <span className={styles.plot} aria-hidden="true">
                  <span className={styles.dear} style={{ left: at(row.dear.at), width: at(zero - row.dear.at) }} />
                  <span className={styles.spare} style={{ left: at(zero), width: at(row.spare.at - zero) }} />
                  <span className={styles.zero} style={{ left: at(zero) }} />
                </span>
              </td>
              <td className={`${styles.number} ${styles[`${row.spare.tone}Text`] ?? ''}`}>{row.spare.text}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p className={styles.note}>{note}</p>
    </div>
  );
}
