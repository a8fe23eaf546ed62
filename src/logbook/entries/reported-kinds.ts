/** The kinds that report something; an amendment, which corrects one of them, is apart. */
import { absence } from './absence.ts';
import { batch } from './batch.ts';
import { bought } from './bought.ts';
import { container } from './container.ts';
import { ended } from './ended.ts';
import { fed } from './fed.ts';
import { group } from './group.ts';
import { harvested } from './harvested.ts';
import { headcount } from './headcount.ts';
import { household } from './household.ts';
import { logger } from './logger.ts';
import { moved } from './moved.ts';
import { note } from './note.ts';
import { order } from './order.ts';
import { place } from './place.ts';
import { purchase } from './purchase.ts';
import { recipe } from './recipe.ts';
import { seen } from './seen.ts';
import { started } from './started.ts';
import { stock } from './stock.ts';
import { strain } from './strain.ts';
import { temperature } from './temperature.ts';
import { weighed } from './weighed.ts';

export const reportedKinds = {
  household,
  place,
  temperature,
  strain,
  container,
  recipe,
  batch,
  started,
  purchase,
  bought,
  seen,
  harvested,
  moved,
  ended,
  group,
  headcount,
  fed,
  weighed,
  absence,
  order,
  stock,
  note,
  logger,
} as const;
