'use client';

import type { Route } from 'next';
import Link from 'next/link';
import { useState } from 'react';
import { MODEL_HEADS, MODELS } from '@/lib/format/words/menu-models';
import type { ModelName } from '@/lib/model/mix/mix-model';
import { Mark } from '../mark';
import type { MarkShape } from '../mark-shape';
import { TableOut } from '../table-out/table-out';
import styles from './model-table.module.css';

/** A dish with its class by each model, in words. */
export interface ModelRow {
  readonly item: string;
  readonly shape: MarkShape;
  readonly href: Route;
  readonly cells: readonly { readonly model: ModelName; readonly name: string; readonly sure: string }[];
  readonly agree: string;
}

/** Each dish by every model; on a narrow sheet the classes stand under the name, each with its model. */
export function ModelTable({
  rows,
  models,
  href,
}: {
  rows: readonly ModelRow[];
  models: readonly ModelName[];
  href: string;
}) {
  const [open, setOpen] = useState(false);
  const text = () =>
    [
      [MODELS.dish, ...models.map((model) => MODEL_HEADS[model].join(', ')), MODELS.agreeHead],
      ...rows.map((row) => [
        row.item,
        ...row.cells.map(({ name, sure }) => [name, sure].filter(Boolean).join(', ')),
        row.agree,
      ]),
    ]
      .map((cells) => cells.join('\t'))
      .join('\n');
  return (
    <section
      className={`${styles.scroll} ${open ? styles.open : ''}`}
      tabIndex={open ? 0 : undefined}
      aria-label={MODELS.region}
    >
      <table className={styles.table}>
        <caption>
          {MODELS.caption}
          <TableOut text={text} rows={rows.length} href={href} unfolding={{ open, setOpen }} />
        </caption>
        <thead>
          <tr>
            <th scope="col">{MODELS.dish}</th>
            {models.map((model) => (
              <th key={model} scope="col" className={styles.fold}>
                {MODEL_HEADS[model][0]}
                <small>{MODEL_HEADS[model][1]}</small>
              </th>
            ))}
            <th scope="col">{MODELS.agreeHead}</th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={row.item}>
              <th scope="row" data-column="item">
                <Mark shape={row.shape} hollow={false} />
                <Link href={row.href} prefetch={false}>
                  {row.item}
                </Link>
                {!open && (
                  <span className={styles.below}>
                    {row.cells.map(({ model, name }) => `${MODEL_HEADS[model][0]}: ${name}`).join(' · ')}
                  </span>
                )}
              </th>
              {row.cells.map(({ model, name, sure }) => (
                <td key={model} className={styles.fold} data-column={model}>
                  <i>{name}</i>
                  {sure && <small>{sure}</small>}
                </td>
              ))}
              <td>{row.agree}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
