/** The HTTP interface under /api/v1: every route, its checks, and the description made from them. */
import { OpenAPIHono } from '@hono/zod-openapi';
import type { Api, ApiContext } from './api-context.ts';
import { refuseBadInput } from './problem-answer.ts';
import { addAnimalRoutes } from './routes/animal-routes.ts';
import { addAnswerRoutes } from './routes/answer-routes.ts';
import { addCompareRoutes } from './routes/compare-routes.ts';
import { addCupWorkRoutes } from './routes/cup-work-routes.ts';
import { addEntryRoutes } from './routes/entry-routes.ts';
import { addEventRoute } from './routes/event-route.ts';
import { addImportRoutes } from './routes/import-routes.ts';
import { addKitchenRoutes } from './routes/kitchen-routes.ts';
import { addLarderRoutes } from './routes/larder-routes.ts';
import { addLineRoutes } from './routes/line-routes.ts';
import { addModelRoutes } from './routes/model-routes.ts';
import { addPaperRoutes } from './routes/paper-routes.ts';
import { addReceiptRoutes } from './routes/receipt-routes.ts';
import { addSensorRoutes } from './routes/sensor-routes.ts';
import { addSheetRoute } from './routes/sheet-routes.ts';
import { addStateRoutes } from './routes/state-routes.ts';
import { addSyncRoutes } from './routes/sync-routes.ts';
import { addTemperatureRoutes } from './routes/temperature-routes.ts';

export function api(context: ApiContext): Api {
  const routes: Api = new OpenAPIHono({ defaultHook: refuseBadInput });
  routes.use(async (_, next) => {
    await context.household.catchUp();
    return next();
  });
  addAnswerRoutes(routes, context);
  addCompareRoutes(routes, context);
  addModelRoutes(routes);
  addAnimalRoutes(routes, context);
  addLineRoutes(routes, context);
  addPaperRoutes(routes, context);
  addKitchenRoutes(routes, context);
  addLarderRoutes(routes, context);
  addSheetRoute(routes, context);
  addCupWorkRoutes(routes);
  addTemperatureRoutes(routes, context);
  addSensorRoutes(routes, context);
  addEntryRoutes(routes, context);
  addImportRoutes(routes, context);
  addReceiptRoutes(routes, context);
  addStateRoutes(routes, context);
  addSyncRoutes(routes, context);
  addEventRoute(routes, context);
  routes.get('/openapi.json', (c) => c.json(routes.getOpenAPI31Document(description(context.version))));
  return routes;
}

function description(version: string) {
  return {
    openapi: '3.1.0',
    info: {
      title: 'Flylarder',
      version,
      license: { name: 'MIT' },
      description:
        'Logbook, forecast and daily jobs for growing flightless fruit flies. Dates are ISO 8601; the unit of every number is in its name. The same question (logbook, day, seed) always gets the same answer.',
    },
    servers: [{ url: '/api/v1' }],
  };
}
