/** How a logger's file is to be read: guessed, shown, and confirmed or corrected once by the keeper. */
import type { Delimiter } from './logger-line.ts';
import type { TemperatureUnit } from './degrees-text.ts';
import type { TimeOrder } from './time-text.ts';

export interface LoggerForm {
  delimiter: Delimiter;
  /** Lines before the first reading. */
  headerLines: number;
  /** The column of the moment, or of the day and then of the time; 0 is the first. */
  timeColumns: number[];
  timeOrder: TimeOrder;
  temperatureColumn: number;
  decimalComma: boolean;
  unit: TemperatureUnit;
  /** Zone of the logger's clock: a name of the IANA database or an offset. */
  timeZone: string;
}

export interface LoggerColumn {
  /** The heading, or `column 2` without one. */
  heading: string;
  /** The cell on the first line of readings. */
  firstCell: string;
  /** Part of a moment, a temperature it could be, another number, or neither. */
  holds: 'time' | 'temperature' | 'number' | 'text';
}

/** What the file itself does not settle, to be asked once. */
export interface LoggerDoubt {
  about: 'timeOrder' | 'temperatureColumn' | 'unit';
  chosen: string;
  choices: string[];
  why: string;
}

export interface LoggerGuess {
  form: LoggerForm;
  columns: LoggerColumn[];
  doubts: LoggerDoubt[];
}
