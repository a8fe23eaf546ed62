/** Which column of a sample holds the temperature, in which unit. Headings may be in any language. */
import { degreesIn, type TemperatureUnit, toCelsius, unitIn } from './degrees-text.ts';
import { enoughLines, shareOf } from './guess-time.ts';

export interface TemperatureGuess {
  column: number;
  unit: TemperatureUnit;
  decimalComma: boolean;
  /** Columns that could be it too. */
  others: number[];
  /** All columns of numbers. */
  numbers: number[];
  /** True when neither the heading nor the cells say the unit. */
  unitGuessed: boolean;
}

/** Words for temperature, by the letters they begin with; the sign for degrees settles it alone. */
const temperatureWord =
  /°|º|℃|℉|\b(temp|tmp|celsius|fahrenheit|kelvin|t\d?$|lämpö|hőmér|hom[eé]r|teplot|toplot|sıcak|sicak|grad|hitast|nhiệt|suhu)|темп|θερμ|温度|気温|溫度|온도|อุณห/iu;
/** Other things that loggers measure: humidity, dew point, pressure, battery, light, CO2. */
const otherWord =
  /%|\brh\b|hum|feucht|fukt|umid|hygro|wilg|vlh|kost|dew|taupunkt|ros[ée]e|roc[ií]o|press|druck|hpa|mbar|batt|volt|lux|light|licht|co2|ppm|湿度|влаж|index|\bno\.?$|\bnr\.?$|^#/iu;

/** @param taken columns of the time. */
export function guessTemperature(
  headings: string[],
  rows: string[][],
  width: number,
  taken: number[],
  delimiter: string,
): TemperatureGuess | null {
  const decimalComma = usesDecimalComma(rows, taken, delimiter);
  const numbers = Array.from({ length: width }, (_, column) => column).filter(
    (column) =>
      !taken.includes(column) &&
      shareOf(rows, (cells) => degreesIn(cells[column] ?? '', decimalComma) !== null) >= enoughLines,
  );
  const scored = numbers
    .map((column) => ({ column, score: scoreOf(headings[column] ?? '', valuesOf(rows, column, decimalComma)) }))
    .filter(({ score }) => score > 0)
    .toSorted((a, b) => b.score - a.score || a.column - b.column);
  const best = scored[0];
  if (!best) return null;
  const others = scored.filter((s) => s !== best && s.score === best.score).map(({ column }) => column);
  const values = valuesOf(rows, best.column, decimalComma);
  const written = writtenUnit(headings[best.column] ?? '', rows, best.column);
  const unit = written ?? likelyUnit(values);
  return { column: best.column, unit, decimalComma, others, numbers, unitGuessed: written === null && unit !== 'C' };
}

/** A comma between digits, in a file that is not cut at commas, or within quotation marks in one that is. */
function usesDecimalComma(rows: string[][], taken: number[], delimiter: string): boolean {
  const cells = rows.flatMap((row) => row.filter((_, column) => !taken.includes(column)));
  const commas = cells.filter((cell) => /^[-+\u2212]?\d+,\d+/.test(cell)).length;
  const points = cells.filter((cell) => /^[-+\u2212]?\d*\.\d+/.test(cell)).length;
  return commas > points && (delimiter !== ',' || points === 0);
}

function valuesOf(rows: string[][], column: number, decimalComma: boolean): number[] {
  return rows.flatMap((cells) => degreesIn(cells[column] ?? '', decimalComma) ?? []);
}

function scoreOf(heading: string, values: number[]): number {
  const inRoom = values.filter((value) => value > -40 && value < 130).length / values.length;
  const counts = values.length > 2 && values.every((value, i) => i === 0 || value === (values[i - 1] as number) + 1);
  const kelvin = values.every((value) => value > 240 && value < 330);
  if (otherWord.test(heading) && !/[°º]\s*[CF]|℃|℉/.test(heading)) return 0;
  if (/dew|taupunkt|ros[ée]e|roc[ií]o/i.test(heading)) return 0;
  if (temperatureWord.test(heading)) return 3;
  if (counts) return 0;
  return inRoom >= enoughLines || kelvin ? 1 : 0;
}

function writtenUnit(heading: string, rows: string[][], column: number): TemperatureUnit | null {
  const inCells = unitIn(rows.at(-1)?.[column] ?? '');
  if (inCells) return inCells;
  if (/fahrenheit|°\s*F|º\s*F|℉|\bF\b|_F$/.test(heading) || /fahrenheit/i.test(heading)) return 'F';
  if (/kelvin/i.test(heading) || /\bK\b/.test(heading)) return 'K';
  return /celsius/i.test(heading) || /[°º]\s*C|℃|\bC\b|_C$/.test(heading) ? 'C' : null;
}

/** A room at 45 degrees Celsius is no room for flies; at 45 Fahrenheit it is a cool one. */
function likelyUnit(values: number[]): TemperatureUnit {
  const middle = values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)] as number;
  if (middle > 200) return 'K';
  return middle > 45 && toCelsius(middle, 'F') > -20 ? 'F' : 'C';
}
