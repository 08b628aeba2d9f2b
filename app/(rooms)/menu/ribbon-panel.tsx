import { Ribbon } from '../../_ui/period-ribbon/ribbon';
import { type Asked, menuHref, periodsOf } from './asked';

export async function RibbonPanel({ asked }: { asked: Asked }) {
  const periods = await periodsOf(asked.venue);
  if (!periods.ok || periods.answer.months.length === 0) return null;
  return <Ribbon periods={periods.answer} chosen={asked.month} hrefOf={(month) => menuHref({ ...asked, month })} />;
}
