import type { Route } from 'next';
import { Ribbon } from '../../_ui/period-ribbon/ribbon';
import { type Asked, periodsOf } from './asked';

/** The months over the sheet; `hrefOf` leads to the same view of another month. */
export async function RibbonPanel({ asked, hrefOf }: { asked: Asked; hrefOf: (month: string) => Route }) {
  const periods = await periodsOf(asked.venue);
  if (!periods.ok || periods.answer.months.length === 0) return null;
  return <Ribbon periods={periods.answer} chosen={asked.month} hrefOf={hrefOf} />;
}
