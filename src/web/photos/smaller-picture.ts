/** A picture in a size that shows a cup well: a phone's own pictures take ten times the room. */

const longestPx = 1600;
const quality = 0.82;

/** A JPEG of at most that many pixels a side, or null when the file is no picture that can be read. */
export async function smallerPicture(file: Blob): Promise<Blob | null> {
  const picture = await createImageBitmap(file).catch(() => null);
  if (!picture) return null;
  const scale = Math.min(1, longestPx / Math.max(picture.width, picture.height));
  const canvas = document.createElement('canvas');
  canvas.width = Math.max(1, Math.round(picture.width * scale));
  canvas.height = Math.max(1, Math.round(picture.height * scale));
  canvas.getContext('2d')?.drawImage(picture, 0, 0, canvas.width, canvas.height);
  picture.close();
  return new Promise((resolve) => canvas.toBlob(resolve, 'image/jpeg', quality));
}
