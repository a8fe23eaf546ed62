/** What to call a browser in a list of sessions, from what it says of itself; a guess, and no more. */

const programs: [RegExp, string][] = [
  [/\bEdg\w*\//, 'Edge'],
  [/\bFirefox\/|\bFxiOS\//, 'Firefox'],
  [/Chrome\/|\bCriOS\//, 'Chrome'],
  [/\bSafari\//, 'Safari'],
];
const systems: [RegExp, string][] = [
  [/\bAndroid\b/, 'Android'],
  [/\biPhone\b/, 'iPhone'],
  [/\biPad\b/, 'iPad'],
  [/\bWindows\b/, 'Windows'],
  [/\bMac OS X\b/, 'Mac'],
  [/\bCrOS\b/, 'ChromeOS'],
  [/\bLinux\b/, 'Linux'],
];

/** Such as "Firefox on Android"; "another program" when nothing is known. */
export function browserName(userAgent: string): string {
  const named = (names: [RegExp, string][]) => names.find(([pattern]) => pattern.test(userAgent))?.[1];
  const [program, system] = [named(programs), named(systems)];
  if (program === undefined) return 'another program';
  return system === undefined ? program : `${program} on ${system}`;
}
