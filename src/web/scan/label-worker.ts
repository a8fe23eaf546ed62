/** Looks for a QR code in a picture, off the main thread: a large picture takes tens of milliseconds. */
import decodeQR from 'qr/decode.js';

/** Wider pictures are made smaller: a label fills a good part of what a keeper points at. */
const widestPx = 1000;

onmessage = ({ data }: MessageEvent<ImageBitmap>) => {
  postMessage(codeIn(data));
};

function codeIn(picture: ImageBitmap): string | null {
  const scale = Math.min(1, widestPx / Math.max(picture.width, picture.height));
  const [width, height] = [Math.round(picture.width * scale), Math.round(picture.height * scale)];
  const context = new OffscreenCanvas(width, height).getContext('2d', { willReadFrequently: true });
  if (!context) return null;
  context.drawImage(picture, 0, 0, width, height);
  picture.close();
  try {
    return decodeQR(context.getImageData(0, 0, width, height));
  } catch {
    // The library throws where it finds no code.
    return null;
  }
}
