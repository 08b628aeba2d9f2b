import { type ColumnKinds, type ReportFile, reportSheet } from '../format/report-file';
import { modelsBasis } from '../format/words/menu-models';
import { fileBasis } from './file-basis';
import type { MenuModelsAnswer, ModelledItemAnswer } from './menu-models-shape';

type Classes = {
  readonly kasavanaSmith: string | null;
  readonly miller: string | null;
  readonly pavesic: string | null;
  readonly goalValueClass: string | null;
  readonly withLabour: string | null;
};
type Row = Omit<ModelledItemAnswer, 'classes'> & Classes;

const COLUMNS: ColumnKinds<Row> = {
  item: 'text',
  section: 'text',
  sold: 'portions',
  popularity: 'share',
  netPrice: 'money',
  foodCostPct: 'share',
  margin: 'money',
  contribution: 'money',
  goalValue: 'number',
  recipeLabour: 'money',
  kasavanaSmith: 'text',
  miller: 'text',
  pavesic: 'text',
  goalValueClass: 'text',
  withLabour: 'text',
  agree: 'yesNo',
};

/** The models as files of rows, one an item with its class by each; how the resamples split stands in the JSON only. */
export function menuModelsFile(answer: MenuModelsAnswer): ReportFile {
  const rows = answer.items.map(({ classes, ...item }): Row => {
    const by = (model: string) => classes.find((each) => each.model === model)?.class ?? null;
    return {
      ...item,
      kasavanaSmith: by('kasavana-smith'),
      miller: by('miller'),
      pavesic: by('pavesic'),
      goalValueClass: by('goal-value'),
      withLabour: by('labour'),
    };
  });
  return {
    name: 'menu-models',
    currency: answer.currency,
    basis: fileBasis(answer, modelsBasis(answer)),
    issues: answer.issues.map(({ text }) => text),
    sheets: [reportSheet('models', COLUMNS, rows)],
  };
}
