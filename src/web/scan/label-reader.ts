/**
 * Reads the code in a picture: by the browser's own reader where there is one, else by a worker that is
 * loaded when it is first needed.
 */
import readerFile from './label-worker.ts?worker&url';

/** A QR code in the picture, as text, or null. */
export type ReadPicture = (picture: ImageBitmap) => Promise<string | null>;

export interface LabelReader {
  read: ReadPicture;
  close(): void;
}

interface Detector {
  detect(picture: ImageBitmap): Promise<{ rawValue: string }[]>;
}
interface DetectorMaker {
  new (options: { formats: string[] }): Detector;
  getSupportedFormats(): Promise<string[]>;
}

export async function labelReader(): Promise<LabelReader> {
  const { BarcodeDetector: maker } = globalThis as { BarcodeDetector?: DetectorMaker };
  const isAble = maker && (await maker.getSupportedFormats().catch((): string[] => [])).includes('qr_code');
  return maker && isAble ? ownReader(new maker({ formats: ['qr_code'] })) : workerReader();
}

function ownReader(detector: Detector): LabelReader {
  return {
    read: async (picture) => (await detector.detect(picture))[0]?.rawValue ?? null,
    close: () => {},
  };
}

function workerReader(): LabelReader {
  const worker = new Worker(readerFile, { type: 'module' });
  return {
    read: (picture) =>
      new Promise((resolve) => {
        worker.onmessage = ({ data }: MessageEvent<string | null>) => resolve(data);
        worker.onerror = () => resolve(null);
        worker.postMessage(picture, [picture]);
      }),
    close: () => worker.terminate(),
  };
}
