/** German of the pages for pairing, signing in and the account. */
import type { PageText } from './en.ts';

export const de: PageText = {
  back: 'Zurück',
  backToPage: 'Zurück zur Seite',
  tooManyTries: 'Zu viele Versuche. Warten Sie einige Minuten.',
  roles: { keeper: 'Halterin oder Halter', helper: 'Hilfe', reader: 'nur lesend' },

  pairTitle: 'Dieses Gerät verbinden',
  pairLead:
    'Dieses Gerät ist hier neu. Den Code zeigt der Computer: auf seiner Seite /network/devices oder mit dem Befehl devices add.',
  code: 'Code',
  deviceName: 'Name dieses Geräts',
  deviceNameSuch: 'Telefon in der Küche',
  nameMissing: 'Geben Sie dem Gerät einen Namen: Damit zeichnet es, was es aufschreibt.',
  codeWrong: 'Dieser Code gilt nicht oder nicht mehr. Lassen Sie sich einen neuen zeigen.',

  devicesTitle: 'Geräte',
  devicesElsewhere: 'Geräte werden an dem Computer zugelassen und ausgeschlossen, auf dem Flylarder läuft.',
  letIn: 'Ein Gerät zulassen',
  goodOnce: 'Gilt einmal, zehn Minuten lang. Scannen oder die Adresse auf dem Gerät eintippen:',
  paired: 'Verbundene Geräte',
  noneYet: 'Noch keine.',
  pairedSince: (day, last) => `verbunden am ${day}, zuletzt hier am ${last}`,
  shutOut: 'Ausschließen',
  offlineTitle: 'Ohne Netz, mit Kamera',
  offline: 'Der Browser eines Telefons erlaubt beides nur über HTTPS:',
  offlineHow: 'so wird es eingerichtet',

  calendarTitle: 'Kalender-Link',
  newCalendarLink: 'Neuer Kalender-Link',
  endLink: 'Link beenden',
  linkEnded: 'Der Link ist beendet. Mit ihm lässt sich nichts mehr lesen.',
  linkLead:
    'Geben Sie den Link einem Kalenderprogramm: Es zeigt die Arbeiten des Plans und folgt ihnen, wenn sie sich verschieben. Wer den Link hat, kann den Plan lesen. Ein neuer Link beendet den vorigen.',
  linkOnce: 'Er wird nur einmal gezeigt; ein neuer Link oder das Ausschließen des Geräts beendet ihn.',
  linkIsSecret: 'Wer einen Kalender-Link hat, kann den Plan lesen. Er wird nur einmal gezeigt; ein neuer beendet ihn.',
  linkOutside:
    'Ein Kalenderdienst im Internet erreicht keinen Server zu Hause. Für einen solchen laden Sie diese Datei ein:',

  auditTitle: 'Wer was aufgeschrieben hat',
  older: 'Ältere',
  forKeepers: 'Nur für Halter.',
  onServer: 'am Server selbst',
  sender: (person, address) => `${person} von ${address}`,
  signed: (by) => `gezeichnet „${by}“`,

  signIn: 'Anmelden',
  signOut: 'Abmelden',
  name: 'Name',
  password: 'Passwort',
  householdIfSeveral: 'Haushalt, wenn Sie zu mehreren gehören',
  signInPasskey: 'Mit Passkey anmelden',
  doNotFit: 'Name und Passwort passen nicht zusammen.',
  noHousehold: 'Dieses Konto gehört zu keinem Haushalt. Wenden Sie sich an einen Halter.',
  nameHousehold: (households) => `Geben Sie den Haushalt an: ${households}.`,

  accountTitle: 'Ihr Konto',
  whoYouAre: (name, role, household) => `${name}, ${role}, Haushalt ${household}.`,
  passkeys: 'Passkeys',
  passkeysLead:
    'Mit einem Passkey melden Sie sich über die Sperre dieses Geräts an, ohne Passwort. Das Passwort gilt weiter.',
  keyName: 'Name des neuen Passkeys',
  keyNameSuch: 'mein Telefon',
  addKey: 'Passkey hinzufügen',
  keyAdded: (day) => `hinzugefügt am ${day}`,
  keyUsed: (day) => `zuletzt benutzt am ${day}`,
  keyUnused: 'noch nicht benutzt',
  remove: (name) => `${name} entfernen`,
  signedIn: 'Angemeldet',
  sessionAt: (address, household, since, last) =>
    `von ${address}, Haushalt ${household}, seit ${since}, zuletzt hier am ${last}`,
  thisOne: 'dieses hier',
  signItOut: 'Abmelden',

  keyUnknown: 'Dieser Passkey ist hier nicht bekannt, oder es hat zu lange gedauert.',
  keyNameMissing: 'Geben Sie dem Passkey einen Namen, etwa „mein Telefon“.',
  keyNotAdded: 'Dieser Passkey konnte nicht hinzugefügt werden.',
  sessionEnded: 'Ihre Anmeldung ist abgelaufen: Melden Sie sich neu an.',
  keyCancelled: 'Kein Passkey wurde benutzt: Es wurde abgebrochen, oder dieses Gerät hat keinen für hier.',
  keyIsHere: 'Dieses Gerät hat schon einen Passkey für hier.',
  notTaken: 'Der Server hat es nicht angenommen. Versuchen Sie es noch einmal.',

  certificateTitle: 'HTTPS für dieses Gerät',
  certificateAtProxy: 'Um HTTPS kümmert sich der Proxy vor diesem Server. Öffnen Sie dessen Adresse.',
  certificateLead:
    'Über einfaches HTTP geht alles außer drei Dingen, die Browser nur mit HTTPS erlauben: ohne Netz arbeiten, die Kamera benutzen und die Seite auf dem Startbildschirm einrichten. Dafür hat der Computer eine eigene Zertifizierungsstelle gemacht. Sie kann nur für Adressen im Heimnetz bürgen, nie für Seiten im Internet, und ihr Schlüssel bleibt im Ordner des Haushalts.',
  downloadCertificate: 'Zertifikat herunterladen',
  installing: [
    [
      'iPhone, iPad:',
      'Einstellungen öffnen, „Profil geladen“, Installieren. Dann unter Allgemein, Info, Zertifikatsvertrauenseinstellungen einschalten.',
    ],
    [
      'Android:',
      'Einstellungen öffnen, nach „CA-Zertifikat“ suchen, „Trotzdem installieren“ wählen und die Datei angeben.',
    ],
    ['Firefox am Computer:', 'Einstellungen, Zertifikate anzeigen, Zertifizierungsstellen, Importieren.'],
    ['Windows, macOS, Chromium:', 'die Datei öffnen und zu den vertrauenswürdigen Stammzertifizierungsstellen legen.'],
  ],
  fingerprint: 'Vergleichen Sie den SHA-256-Fingerabdruck, bevor Sie zustimmen:',
  thenOpen: 'Öffnen Sie diese Adresse und verbinden Sie das Gerät dort noch einmal:',
  undoCertificate:
    'Rückgängig machen Sie es, indem Sie „Flylarder of this household“ an derselben Stelle entfernen. Die Namen der Knöpfe unterscheiden sich je nach Version dieser Systeme.',
};
