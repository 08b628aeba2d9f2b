import type { Table } from './csv-table';
import { HOUSE_FILES } from './house-files';
import { RECIPE_FILES } from './recipe-files';
import { SALES_FILES } from './sales-files';
import { STORE_FILES } from './store-files';
import { SUPPLIER_FILES } from './supplier-files';

/** Every file of the data folder. */
export const DEMO_FILES: readonly Table[] = [
  ...HOUSE_FILES,
  ...SUPPLIER_FILES,
  ...RECIPE_FILES,
  ...SALES_FILES,
  ...STORE_FILES,
];
