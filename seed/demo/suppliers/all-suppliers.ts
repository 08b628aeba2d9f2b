import type { Supplier } from '../shapes';
import { DUNE_LANE_FARM_AND_FRUIT } from './dune-lane-farm-and-fruit';
import { GREYWICK_IMPORTS } from './greywick-imports';
import { QUAYSIDE_COCOA_AND_NUTS } from './quayside-cocoa-and-nuts';
import { SALTMARSH_DAIRY } from './saltmarsh-dairy';
import { TERN_STREET_STORES } from './tern-street-stores';

export const SUPPLIERS: readonly Supplier[] = [
  SALTMARSH_DAIRY,
  QUAYSIDE_COCOA_AND_NUTS,
  TERN_STREET_STORES,
  DUNE_LANE_FARM_AND_FRUIT,
  GREYWICK_IMPORTS,
];
