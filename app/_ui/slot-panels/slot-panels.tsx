import widths from '../three-widths.module.css';
import { PANEL_SIZES } from './panel-size';
import { PanelsDrawing } from './panels-drawing';
import type { SlotFacts } from './slot-facts';

/** Small pictures one under the other on one axis, drawn for each width, of which the one that fits is shown; the table has the same facts. */
export function SlotPanels({ facts, name }: { facts: SlotFacts; name: string }) {
  return (
    <div className={widths.place} role="img" aria-label={name}>
      {PANEL_SIZES.map((size) => (
        <div key={size.name} className={widths[size.name]}>
          <PanelsDrawing facts={facts} size={size} />
        </div>
      ))}
    </div>
  );
}
