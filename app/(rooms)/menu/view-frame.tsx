import type { Route } from 'next';
import { type ReactNode, Suspense } from 'react';
import { RibbonWait } from '../../_ui/period-ribbon/ribbon-wait';
import type { Asked } from './asked';
import { FootPanel } from './foot-panel';
import { RibbonPanel } from './ribbon-panel';
import { type MenuView, ViewLinks } from './view-links';

/** What every view of the Menu room stands in: the ribbon and the other views over it, the foot under it. */
export function ViewFrame({
  current,
  asked,
  hrefOf,
  children,
}: {
  current: MenuView | null;
  asked: Asked;
  /** The same view of another month. */
  hrefOf: (month: string) => Route;
  children: ReactNode;
}) {
  return (
    <>
      <Suspense fallback={<RibbonWait />}>
        <RibbonPanel asked={asked} hrefOf={hrefOf} />
      </Suspense>
      <ViewLinks current={current} asked={asked} />
      <main id="main" className="wrap" tabIndex={-1}>
        {children}
      </main>
      <Suspense>
        <FootPanel asked={asked} />
      </Suspense>
    </>
  );
}
