/** English of the pages for pairing, signing in and the account. */
export const en = {
  back: 'Back',
  backToPage: 'Back to the page',
  tooManyTries: 'Too many tries. Wait some minutes.',
  roles: { keeper: 'keeper', helper: 'helper', reader: 'reader' },

  pairTitle: 'Pair this device',
  pairLead:
    'This device is new here. The code is shown on the computer: its page /network/devices, or the command devices add.',
  code: 'Code',
  deviceName: 'Name of this device',
  deviceNameSuch: 'Phone in the kitchen',
  nameMissing: 'Give the device a name: it signs what it records.',
  codeWrong: 'This code is not good, or no longer. Ask for a new one.',

  devicesTitle: 'Devices',
  devicesElsewhere: 'Devices are let in and shut out on the computer that runs Flylarder.',
  letIn: 'Let a device in',
  goodOnce: 'Good once, for ten minutes. Scan, or type the address on the device:',
  paired: 'Paired devices',
  noneYet: 'None yet.',
  pairedSince: (day: string, last: string) => `paired ${day}, last here ${last}`,
  shutOut: 'Shut out',
  offlineTitle: 'Offline use, camera',
  offline: "A phone's browser allows both only over HTTPS:",
  offlineHow: 'how to set that up',

  calendarTitle: 'Calendar link',
  newCalendarLink: 'New calendar link',
  endLink: 'End the link',
  linkEnded: 'The link has ended. Nothing can be read with it any more.',
  linkLead:
    "Give the link to a calendar program: it shows the plan's jobs and follows when they move. Whoever has the link can read the plan. A new link ends the one before.",
  linkOnce: 'It is shown once; a new link, or shutting the device out, ends it.',
  linkIsSecret: 'Whoever has a calendar link can read the plan. It is shown once; a new one ends it.',
  linkOutside:
    'A calendar service on the internet cannot reach a server at home. For such a one, bring in this file instead:',

  auditTitle: 'Who recorded what',
  older: 'Older',
  forKeepers: 'For keepers only.',
  onServer: 'on the server itself',
  sender: (person: string, address: string) => `${person} from ${address}`,
  signed: (by: string) => `signed "${by}"`,

  signIn: 'Sign in',
  signOut: 'Sign out',
  name: 'Name',
  password: 'Password',
  householdIfSeveral: 'Household, if you belong to several',
  signInPasskey: 'Sign in with a passkey',
  doNotFit: 'Name and password do not fit.',
  noHousehold: 'This account belongs to no household. Ask a keeper.',
  nameHousehold: (households: string) => `Name the household: ${households}.`,

  accountTitle: 'Your account',
  whoYouAre: (name: string, role: string, household: string) => `${name}, ${role} of ${household}.`,
  passkeys: 'Passkeys',
  passkeysLead: "With a passkey you sign in by this device's own lock, without a password. The password stays good.",
  keyName: 'Name of the new key',
  keyNameSuch: 'my phone',
  addKey: 'Add a passkey',
  keyAdded: (day: string) => `added ${day}`,
  keyUsed: (day: string) => `last used ${day}`,
  keyUnused: 'not used yet',
  remove: (name: string) => `Remove ${name}`,
  signedIn: 'Signed in',
  sessionAt: (address: string, household: string, since: string, last: string) =>
    `at ${address}, in ${household} since ${since}, last here ${last}`,
  thisOne: 'this one',
  signItOut: 'Sign it out',

  keyUnknown: 'This key is not known here, or it took too long.',
  keyNameMissing: 'Give the key a name, such as "my phone".',
  keyNotAdded: 'This key could not be added.',
  sessionEnded: 'Your session has ended: sign in again.',
  keyCancelled: 'No key was used: it was cancelled, or this device has none for here.',
  keyIsHere: 'This device has a key for here already.',
  notTaken: 'The server did not take it. Try again.',

  certificateTitle: 'HTTPS for this device',
  certificateAtProxy: 'HTTPS is the business of the proxy in front of this server. Open its address.',
  certificateLead:
    "Everything works over plain HTTP except three things that browsers keep for HTTPS: use without the network, the camera, and installing the page on the home screen. The computer has made a certificate authority of its own for them. It can vouch only for addresses of home networks, never for a site of the internet, and its key stays in the household's folder.",
  downloadCertificate: 'Download the certificate',
  installing: [
    [
      'iPhone, iPad:',
      'open Settings, Profile Downloaded, Install. Then General, About, Certificate Trust Settings: switch it on.',
    ],
    ['Android:', 'open Settings, search for "CA certificate", choose Install anyway, and pick the file.'],
    ['Firefox on a computer:', 'Settings, Certificates, Authorities, Import.'],
    ['Windows, macOS, Chromium:', 'open the file and put it with the trusted root authorities.'],
  ] as [system: string, steps: string][],
  fingerprint: 'Compare the SHA-256 fingerprint before you agree:',
  thenOpen: 'Open this address and pair there once more:',
  undoCertificate:
    'To undo it, remove "Flylarder of this household" from the same place. The names of buttons differ between versions of these systems.',
};

export type PageText = typeof en;
