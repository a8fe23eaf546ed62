/** A length of time in units that both languages write alike: `9 min`, `1 h 32 min`. */
export function hoursAndMinutes(minutes: number): string {
  const [hours, rest] = [Math.floor(minutes / 60), Math.round(minutes % 60)];
  return [hours > 0 && `${hours} h`, (rest > 0 || hours === 0) && `${rest} min`].filter(Boolean).join(' ');
}
