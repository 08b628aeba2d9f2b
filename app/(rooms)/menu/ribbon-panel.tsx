import type { Route } from 'next';
import { Ribbon } from '../../_ui/period-ribbon/ribbon';
import { type Asked, menuHref, periodsOf } from './asked';

/** The months over the sheet; `hrefOf` leads to the same view of another month, the mix where it is not said. */
export async function RibbonPanel({
  asked,
  hrefOf = (month) => menuHref({ ...asked, month }),
}: {
  asked: Asked;
  hrefOf?: (month: string) => Route;
}) {
  const periods = await periodsOf(asked.venue);
  if (!periods.ok || periods.answer.months.length === 0) return null;
  return <Ribbon periods={periods.answer} chosen={asked.month} hrefOf={hrefOf} />;
}
