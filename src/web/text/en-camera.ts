/** Words of labels read by camera and of photos, in English. */
export const enCamera = {
  'screen.scan': 'Scan a label',
  'scan.title': 'Open a cup by its label',
  'scan.lead': 'Hold the code of the label into the picture.',
  'scan.view': 'What the camera sees',
  'scan.opening': 'Opening the camera…',
  'scan.camera.insecure':
    'The camera needs a protected address (https). This page came over an unprotected one. Choose a photo, or type what stands on the label.',
  'scan.camera.refused':
    'This page may not use the camera. Allow it in the browser’s settings for this address, then open this screen again; or choose a photo.',
  'scan.camera.missing':
    'There is no camera that can be used just now. Choose a photo, or type what stands on the label.',
  'scan.photo': 'Choose a photo',
  'scan.reading': 'Reading the photo…',
  'scan.nothing': 'No code was found in that photo. Take it from nearer, straight on, in good light.',
  'scan.noPicture': 'That file is no picture that can be read.',
  'scan.unknown': 'The label says “{text}”; this logbook has no such cup.',
  'scan.type': 'Or what stands on the label',
  'scan.open': 'Open',
  'photo.title': 'Photos',
  'photo.add': 'Add a photo',
  'photo.where':
    'Photos stay on this device, made small. They are not sent to your server and are not in the logbook’s file: save the ones that matter.',
  'photo.demo': 'In your own household you can keep photos of a cup here.',
  'photo.alt': '{cup} on {day}',
  'photo.day': { one: 'Day 1 · {day}', other: 'Day {count} · {day}' },
  'photo.save': 'Save a copy',
  'photo.remove': 'Remove',
  'photo.removed': 'The photo is removed',
  'photo.full':
    'This device has no room for the photo. The logbook and the other photos are safe. Remove some photos or make room, then add it again.',
  'photo.unreadable': '{file} is no picture that this browser can read.',
  'culture.before': { one: '{count} generation back', other: '{count} generations back' },
} as const;
