/** The forecast's days as the pictures want them, one list a strain. */
import type { ForecastAnswer } from '../../app/index.ts';
import type { SupplyDay } from './band-geometry.ts';

export function supplyByStrain(forecast: ForecastAnswer): Map<string, SupplyDay[]> {
  const byStrain = new Map<string, SupplyDay[]>();
  for (const day of forecast.days) {
    const strain = day.strain ?? '';
    const days = byStrain.get(strain) ?? [];
    days.push({ date: day.date, wanted: day.wantedFlies, onHand: day.onHandFlies, serviceLevel: day.serviceLevel });
    byStrain.set(strain, days);
  }
  return byStrain;
}
