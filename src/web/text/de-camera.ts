/** Words of labels read by camera and of photos, in German. */
export const deCamera = {
  'screen.scan': 'Etikett lesen',
  'scan.title': 'Einen Becher über sein Etikett öffnen',
  'scan.lead': 'Halten Sie den Code des Etiketts ins Bild.',
  'scan.view': 'Was die Kamera sieht',
  'scan.opening': 'Die Kamera wird geöffnet …',
  'scan.camera.insecure':
    'Die Kamera verlangt eine geschützte Adresse (https). Diese Seite kam über eine ungeschützte. Wählen Sie ein Foto, oder tippen Sie, was auf dem Etikett steht.',
  'scan.camera.refused':
    'Diese Seite darf die Kamera nicht benutzen. Erlauben Sie es in den Einstellungen des Browsers für diese Adresse, und öffnen Sie diese Seite dann wieder; oder wählen Sie ein Foto.',
  'scan.camera.missing':
    'Zurzeit lässt sich keine Kamera benutzen. Wählen Sie ein Foto, oder tippen Sie, was auf dem Etikett steht.',
  'scan.photo': 'Foto wählen',
  'scan.reading': 'Das Foto wird gelesen …',
  'scan.nothing':
    'In diesem Foto war kein Code zu finden. Nehmen Sie es näher, gerade von vorn und bei gutem Licht auf.',
  'scan.noPicture': 'Diese Datei ist kein Bild, das sich lesen lässt.',
  'scan.unknown': 'Auf dem Etikett steht „{text}“; so einen Becher kennt dieses Logbuch nicht.',
  'scan.type': 'Oder was auf dem Etikett steht',
  'scan.open': 'Öffnen',
  'photo.title': 'Fotos',
  'photo.add': 'Foto hinzufügen',
  'photo.where':
    'Fotos bleiben verkleinert auf diesem Gerät. Sie gehen nicht an Ihren Server und stehen nicht in der Datei des Logbuchs: Sichern Sie, was Ihnen wichtig ist.',
  'photo.demo': 'In Ihrem eigenen Haushalt können Sie hier Fotos eines Bechers behalten.',
  'photo.alt': '{cup} am {day}',
  'photo.day': { one: 'Tag 1 · {day}', other: 'Tag {count} · {day}' },
  'photo.save': 'Kopie sichern',
  'photo.remove': 'Entfernen',
  'photo.removed': 'Das Foto ist entfernt',
  'photo.full':
    'Für das Foto ist auf diesem Gerät kein Platz. Das Logbuch und die anderen Fotos sind sicher. Entfernen Sie Fotos oder schaffen Sie Platz, und fügen Sie es dann wieder hinzu.',
  'photo.unreadable': '{file} ist kein Bild, das dieser Browser lesen kann.',
  'culture.before': { one: 'Vor {count} Generation', other: 'Vor {count} Generationen' },
} as const;
