/** English: what is printed, and the calendar. */
import type { Message } from './message.ts';

export const enPaper = {
  'screen.paper': 'Paper and calendar',
  'more.paper': 'Labels, sheets for the fridge, a sitter or a gift; the plan in your calendar',

  'paper.labels': 'Labels',
  'paper.shelf': 'Shelf card',
  'paper.month': 'Month',
  'paper.sitter': 'Sitter',
  'paper.given': 'Gift or sale',
  'paper.calendar': 'Calendar',
  'paper.labels.lead': 'One for each cup, with a code that opens the cup on this page.',
  'paper.shelf.lead': 'The cups of a shelf with their dates, to pin beside them.',
  'paper.month.lead': 'A month for the fridge: what to do on which day, with boxes to tick.',
  'paper.sitter.lead': 'For someone who never saw a fly: each day whom to feed from which cup, and what may go wrong.',
  'paper.given.lead':
    'One page for whoever gets a cup: the dates at their room’s warmth, feeding, the next cup, cautions.',
  'paper.calendar.lead':
    'The plan’s jobs where you look anyway. When the plan changes, events move; they are never doubled.',
  'paper.print': 'Print',
  'paper.printHint': 'Print at full size (100 %), without headers.',
  'paper.reckoning': 'Setting the page…',
  'paper.labelForm': 'Labels on',
  'paper.labelForm.sheet': 'a sheet',
  'paper.labelForm.single': 'single ones',
  'paper.sheet': 'Sheet',
  'paper.sheetName': '{paper}, {size} mm, {count} labels',
  'paper.skip': 'Places already used',
  'paper.skipHint': 'A sheet that was begun is not wasted.',
  'paper.width': 'Width',
  'paper.height': 'Height',
  'paper.whichLabels': 'For these cups (none chosen: all)',
  'paper.whichShelf': 'Which place (none chosen: all)',
  'paper.oneShelf': 'All living cups.',
  'paper.whichMonth': 'Month',
  'paper.from': 'First day away',
  'paper.until': 'Last day away',
  'paper.contact': 'Whom to call',
  'paper.whichCup': 'The cup',
  'paper.theirRoom': 'Where it goes it is',
  'paper.link': 'Address of a calendar file of your own',
  'paper.linkHint': 'Leave it empty: the codes on the sheet then hold the dates themselves.',

  'calendar.file': 'A file to bring in',
  'calendar.fileWhat':
    'Any calendar takes it. Bring it in again when the plan has changed: the same jobs keep their events.',
  'calendar.when': 'Jobs are',
  'calendar.when.day': 'for the day',
  'calendar.when.time': 'at a time',
  'calendar.at': 'At',
  'calendar.also': 'Also',
  'calendar.feeding': 'feeding, every day',
  'calendar.take': 'Take the calendar file',
  'calendar.subscribe': 'A link to subscribe to',
  'calendar.noServer':
    'Your logbook is kept on this device, and there is no server: a calendar has nothing to ask. Take the file instead.',
  'calendar.here': 'A calendar on the computer that runs the server reads this address:',
  'calendar.private':
    'A phone needs a private link of its own. Whoever has it can read the plan; a new link ends the old one, and it can be ended for good.',
  'calendar.getLink': 'Get or end a private link',
  'calendar.thisComputerOnly':
    'This server answers this computer only. Opened to the home network, it gives phones private links as well.',
  'calendar.cloud':
    'A calendar service on the internet cannot reach a computer at home. For such a one, bring in the file.',
} satisfies Record<string, Message>;
