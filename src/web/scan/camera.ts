/** The camera as a stream of pictures, or the reason why there is none. */

export type NoCamera = 'insecure' | 'refused' | 'missing';

export async function openCamera(): Promise<MediaStream | NoCamera> {
  // Browsers give the camera to protected pages only.
  if (!isSecureContext || !navigator.mediaDevices) return 'insecure';
  try {
    return await navigator.mediaDevices.getUserMedia({
      video: { facingMode: 'environment', width: { ideal: 1280 } },
      audio: false,
    });
  } catch (error) {
    return (error as Error).name === 'NotAllowedError' ? 'refused' : 'missing';
  }
}

export function closeCamera(stream: MediaStream): void {
  for (const track of stream.getTracks()) track.stop();
}
