/** What went wrong with deliveries, at the first one of that code on or after the day. */
export interface Mishap {
  readonly supplier: string;
  readonly code: string;
  readonly from: string;
  readonly what:
    | { readonly kind: 'overcharged'; readonly perPack: number; readonly credited: boolean }
    | { readonly kind: 'short'; readonly packs: number }
    | { readonly kind: 'returned'; readonly packs: number };
}

const DAIRY = 'Saltmarsh Dairy';

export const MISHAPS: readonly Mishap[] = [
  { supplier: DAIRY, code: 'MK-2', from: '2025-06-10', what: { kind: 'overcharged', perPack: 0.15, credited: true } },
  { supplier: 'Dune Lane Farm & Fruit', code: 'STR-32', from: '2025-07-15', what: { kind: 'returned', packs: 1 } },
  { supplier: DAIRY, code: 'DC-2', from: '2025-09-23', what: { kind: 'overcharged', perPack: 1, credited: true } },
  { supplier: 'Quayside Cocoa & Nuts', code: 'D60-3', from: '2025-11-19', what: { kind: 'short', packs: 1 } },
  { supplier: DAIRY, code: 'EG-180', from: '2026-02-17', what: { kind: 'overcharged', perPack: 3.6, credited: false } },
  { supplier: 'Dune Lane Farm & Fruit', code: 'RAS-15', from: '2026-06-18', what: { kind: 'returned', packs: 1 } },
  { supplier: DAIRY, code: 'DC-2', from: '2026-07-14', what: { kind: 'overcharged', perPack: 0.6, credited: false } },
  { supplier: 'Tern Street Stores', code: 'SU-25', from: '2026-08-06', what: { kind: 'short', packs: 1 } },
  { supplier: DAIRY, code: 'DC-2', from: '2026-10-06', what: { kind: 'overcharged', perPack: 0.6, credited: false } },
  { supplier: DAIRY, code: 'DC-2', from: '2026-10-20', what: { kind: 'overcharged', perPack: 0.6, credited: false } },
  { supplier: DAIRY, code: 'MK-2', from: '2026-10-13', what: { kind: 'overcharged', perPack: 0.2, credited: false } },
];
