import type { Verdict } from './finding.ts';

interface ProbeWords {
  readonly title: string;
  /** What it means for the class where something else was seen than expected. */
  readonly means: string;
  /** What to do then. */
  readonly advice: string;
}

/** Every text of the self-check that the desk makes. Each probe has its words under its name. */
export const selfCheckWords = {
  heading: 'Self-check of Labrow',
  verdicts: {
    expected: 'as expected',
    different: 'different',
    'not tried': 'could not be tried',
  } as const satisfies Record<Verdict, string>,
  roles: { teacher: 'as the teacher', student: 'from a student’s account' },
  ranOn: (day: string, role: string, version: number) => `Tried out on ${day}, ${role}. Layout ${version}.`,
  counts: (expected: number, different: number, notTried: number) =>
    `${expected} as expected, ${different} different, ${notTried} could not be tried.`,
  linkText: 'down to row 90',
  inGeneral: {
    ready: 'Nothing stands in the way of a lesson here.',
    look: 'Read the parts below that say “different” before the first class.',
    notReady: 'Do not begin a lesson with this file and this account yet: the checks would not answer.',
  },
  means: 'What it means:',
  advice: 'What to do:',
  nothingHeld: 'This report holds no names, no entries and no address; it may be pasted as it is.',
  stopped: 'The self-check was stopped before this part.',
  refused: (words: string) => `The host refused: ${words}.`,
  noAnswer: (seconds: number) => `No answer after ${seconds} s.`,
  needsFunctions: 'Functions in cells give no answer here, so there was nothing to look at.',

  probes: {
    sheet: {
      title: 'A sheet to try things out in',
      means: 'A lesson is built from such sheets: where none can be made, none can be built.',
      advice: 'Ask the owner of the file for the right to edit it, then try again.',
    },
    copy: {
      title: 'What a copy of the file brings along',
      means:
        'Labrow then knows the sheets of a copied lesson by what is in them, and marks them again when you build. Nothing typed is lost.',
      advice: 'In a fresh copy press Build once before the class comes.',
    },
    formulas: {
      title: 'Formulas that a script writes',
      means:
        'Where a formula reads back otherwise than written, each build writes it again and every check runs again.',
      advice: 'Build between classes and not while one is typing. Send us this report.',
    },
    native: {
      title: 'The sheet’s own functions',
      means:
        'Rows, links and the Progress sheet are made of these formulas: the ones named above would show something wrong.',
      advice: 'Do not use the sheets that they stand in; the sidebar works without them. Send us this report.',
    },
    functions: {
      title: 'Labrow’s functions in cells',
      means: 'Each check is such a function. Without an answer no row says whether it is right.',
      advice:
        'Ask whoever looks after your accounts whether scripts are switched on for this account. Until then let the sidebar work out the checks, by “Checks come from” under “Checks and hints” in Plan, or use the tables on paper and the key, under Prepare.',
    },
    arguments: {
      title: 'What a function is given',
      means: 'A function could take a blank, a date or an error for something else than it is.',
      advice:
        'Type a row of the lesson right, wrong and blank, and look whether its check says so. Send us this report.',
    },
    spill: {
      title: 'A check that fills the rows below it',
      means:
        'Checks and hints of a whole team come from one cell: they would be missing, or would not come back after a mishap.',
      advice: 'After somebody has typed over a check, press “Check again” in the menu.',
    },
    crowd: {
      title: 'Thirty functions at once',
      means: 'When a whole class is built or checked at once, some checks fail for a while.',
      advice: 'Wait a minute, then press “Check again” in the menu: it enters only those that failed.',
    },
    texts: {
      title: 'What is typed stays as it is',
      means: 'Zeros at the end of a number, or a name that begins with a sign, would be changed.',
      advice: 'Send us this report before you use the file.',
    },
    tags: {
      title: 'Marks by which sheets are known',
      means: 'A sheet that was renamed would be known by what is in it alone.',
      advice: 'Leave headings and the columns to the far right of a class sheet alone.',
    },
    protection: {
      title: 'Protected cells that warn',
      means: 'Headings and checks could be typed over without a warning, or entries could ask for one.',
      advice: 'Tell the class which cells are theirs, and press “Check again” when a check is gone.',
    },
    desk: {
      title: 'The teacher’s part of the sidebar',
      means: 'The sidebar does not tell teacher and students apart: whoever opens it sees the key and can build.',
      advice:
        'As the owner open Protected sheets and ranges, find the hidden sheet “Labrow teacher”, and take everybody off who is not to teach. A colleague who was kept out is let in there too.',
    },
    trigger: {
      title: 'Counting tries',
      means:
        'Tries and times of the last entry would be missing or too low. Checks, hints and Progress do not need them.',
      advice: 'Read tries as “at least so many”, and in the Record put in by hand who was there.',
    },
    waiting: {
      title: 'Waiting for each other',
      means: 'Buttons of the sidebar may say that the file is busy.',
      advice: 'Wait a moment and press again; nothing typed is touched by it.',
    },
    rules: {
      title: 'Lists and tints',
      means:
        'A cell with a list could refuse a word of your own, or the tints of checks could be missing; the words stay.',
      advice: 'Nothing has to be done. Send us this report.',
    },
    clock: {
      title: 'Clock and language of the file',
      means: 'The day in Record, in “absent today” and in the names of kept sheets could be another than yours.',
      advice: 'Set the time zone of the file in its settings to the one where you teach.',
    },
    width: {
      title: 'Room in the sidebar',
      means: 'Lines of the sidebar are made for 300 and look otherwise here; nothing is lost.',
      advice: 'Nothing has to be done.',
    },
    storage: {
      title: 'What is half typed in the sidebar',
      means: 'What you have typed in a form of the sidebar is gone when you close it.',
      advice: 'Build, or keep the entry, before you close the sidebar.',
    },
    clipboard: {
      title: 'Copying by a button',
      means: 'A button that copies marks the text instead.',
      advice: 'Press Ctrl+C (on a Mac ⌘C) while the text is marked.',
    },
    gone: {
      title: 'Leaving nothing behind',
      means: 'The scratch sheet is still there.',
      advice: 'Delete the sheet whose first cell says that Labrow tries this file out there.',
    },
  } as const satisfies Record<string, ProbeWords>,

  saw: {
    sheetMade: 'A sheet could be made and written to.',
    sheetLeft: 'A sheet that an earlier run had left was there and was removed.',
    copyFirst: 'This part needs a second run, in a copy of the file: press “Leave marks for a copy” at the end.',
    copyOriginal:
      'The marks of the earlier run are still in the file that they were made in. Make a copy and run there.',
    copy: (tags: boolean, properties: boolean, protections: boolean) =>
      `In this copy the marks on sheets are ${tags ? 'there' : 'gone'}, the script’s notes are ${properties ? 'there' : 'gone'}, and the protection of a sheet is ${protections ? 'there' : 'gone'}.`,
    separator: (separator: string, locale: string) =>
      separator === ','
        ? `A formula takes “,” between its arguments here (language and country: ${locale}).`
        : `A formula takes “${separator}” between its arguments here (language and country: ${locale}); Labrow finds that out by trying. Type it so in formulas of your own.`,
    separatorMissed: (separator: string, locale: string) =>
      `A formula takes “${separator}” between its arguments here, though the language and country (${locale}) say “,”.`,
    noSeparator: (comma: string, semicolon: string) =>
      `Neither “,” nor “;” between arguments gave the sum of 1 and 2: ${comma} and ${semicolon}.`,
    readsBack: 'A formula reads back as it was written.',
    readsBackOtherwise: (wrote: string, read: string) => `A formula written as ${wrote} reads back as ${read}.`,
    nativeRight: (count: number) => `All ${count} formulas tried gave what they should.`,
    nativeWrong: (count: number, which: readonly string[]) =>
      `${which.length} of ${count} formulas gave something else. ${which.join(' ')}`,
    oneNative: (about: string, wanted: string, gave: string) => `${about}: ${gave} instead of ${wanted}.`,
    functionAnswered: (seconds: number) =>
      `MOLARMASS("KBr") gave 119.00, and a formula that cannot be read gave an error, after ${seconds} s.`,
    functionGave: (gave: string, odd: string) =>
      `MOLARMASS("KBr") gave ${gave}, and a formula that cannot be read ${odd}.`,
    argumentsRight: (count: number) => `All ${count} kinds of cells arrived as they should.`,
    argumentsWrong: (which: readonly string[]) => which.join(' '),
    oneArgument: (about: string, gave: string) => `${about} arrived as ${gave}.`,
    spillRight: (seconds: number, wasLoading: boolean) =>
      `17 rows of 3 cells were filled after ${seconds} s${wasLoading ? ', and said until then that they were loading' : ''}. With a text in the way there was an error, and they came once it was gone.`,
    spillWrong: (filled: number, of: number) => `${filled} of ${of} cells were filled.`,
    blockedOver: 'A text in the way was written over, or gave no error.',
    blockedStays: 'After the text in the way was gone the cells stayed empty.',
    crowdRight: (count: number, seconds: number) => `All ${count} gave the right answer, the last after ${seconds} s.`,
    crowdWrong: (right: number, count: number, seconds: number, other: string) =>
      `${right} of ${count} gave the right answer within ${seconds} s; the first of the others showed ${other}.`,
    textsRight:
      'Zeros at the end, a number written as one, and texts that begin with = or with an apostrophe, stayed as they were.',
    oneText: (wrote: string, read: string) => `${wrote} became ${read}.`,
    tagsRight: (twin: boolean) =>
      `A mark stays when its sheet is renamed. A sheet that is duplicated ${twin ? 'takes a second mark with it' : 'goes without a mark'}; Labrow goes on with the first.`,
    tagsWrong: (after: number) => `After renaming there were ${after} marks instead of one.`,
    protectionRight: (open: number) =>
      `A protection that only warns, with ${open} places left open, could be set and taken away.`,
    protectionWrong: (open: number, isWarning: boolean) =>
      `The protection ${isWarning ? 'warns' : 'does not only warn'} and leaves ${open} places open instead of 60.`,
    deskIn: 'You were let in as one who teaches.',
    deskOut: 'You were kept out, as students are to be.',
    deskNone: 'No lesson has been built in this file yet, so there is nothing that tells who teaches.',
    deskTeacherOut: 'You said that you teach, and were kept out.',
    deskStudentIn: 'You tried this as a student and were let in.',
    triggerRight: (count: number) => `All ${count} entries that you typed were counted.`,
    triggerWrong: (counted: number, typed: number) => `${counted} of ${typed} entries that you typed were counted.`,
    triggerNone: 'Nothing was typed into the ten cells.',
    lockRight: (lock: number, flush: number) => `The file was free after ${lock} s, and writing took ${flush} s.`,
    lockWrong: 'Another run held the file for longer than a third of a second, though nobody else was at work.',
    rulesRight: 'A list takes a word that is not in it, and a tint for a word could be set.',
    rulesWrong: (kept: string, rules: number) =>
      `The cell with a list then held ${kept}, and there were ${rules} tints instead of one.`,
    clockRight: (zone: string, clock: string) => `In the file it is ${clock} (${zone}), as on this device.`,
    clockWrong: (zone: string, clock: string, here: string) =>
      `In the file it is ${clock} (${zone}); this device says ${here}.`,
    zonesDiffer: (scriptZone: string) => `The script’s own zone is ${scriptZone}; Labrow goes by the file’s.`,
    minute: 'The file can work out its clock every minute.',
    noMinute: (now: string) => `The file did not take working out every minute, and said ${now}.`,
    width: (pixels: number) => `The sidebar is ${pixels} wide.`,
    storageRight: 'What is half typed is kept while the file is open.',
    storageWrong: 'This browser keeps nothing for the sidebar.',
    clipboardRight: 'The button could copy.',
    clipboardOldWay: 'The button could copy, by the older of the two ways.',
    clipboardWrong: 'The button could not copy.',
    leftForCopy:
      'The scratch sheet stays for a run in a copy: choose File, Make a copy, open the copy and try it out there. Here it goes with the next run.',
    goneRight: 'The scratch sheet is gone.',
    goneWrong: (left: number) => `${left === 1 ? 'One scratch sheet is' : `${left} scratch sheets are`} still there.`,
  },

  cells: {
    blank: 'A blank cell',
    leftOut: 'An argument that was left out',
    tick: 'A cell that says TRUE',
    date: 'A date',
    percent: 'A percentage',
    error: 'An error',
    text: 'A number typed as text',
    number: 'A number',
    range: 'Two rows of two blank cells',
  },
  asked: {
    yes: 'yes',
    no: 'no',
    answer: (answer: string) => `You answered: ${answer}.`,
    unanswered: (titles: readonly string[]) => `Not answered: ${titles.join(', ')}.`,
  },
} as const;

export type ProbeName = keyof typeof selfCheckWords.probes | QuestionName;

interface Question {
  readonly title: string;
  /** Asked of the person, who answers yes or no. */
  readonly asks: string;
  readonly expected: 'yes' | 'no';
  readonly means: string;
  readonly advice: string;
}

/** What only a person can see. */
export const questions = {
  consent: {
    title: 'The first question for consent',
    asks: 'When this menu was used for the first time, did the host warn that the app is not verified?',
    expected: 'no',
    means:
      'Everybody who opens the sidebar sees that warning once. Students see it only if they open the sidebar, which they need not.',
    advice: 'Read in the README what it looks like and why it comes, before colleagues ask.',
  },
  dialog: {
    title: 'A page over the sidebar',
    asks: 'Open the page below and close it with its button. Did it close, and is this panel still here?',
    expected: 'yes',
    means: 'Pages to print or to project stay open, or take the sidebar’s place.',
    advice: 'Close such a page by its cross, and open the sidebar again from the menu.',
  },
  print: {
    title: 'Printing',
    asks: 'On that page press “Print this page”. Did the window for printing open?',
    expected: 'yes',
    means: 'Labels, the key and tables on paper cannot be printed from here.',
    advice: 'Take another browser for printing, or copy the list into a document.',
  },
  link: {
    title: 'Links within the file',
    asks: 'In the scratch sheet click the cell B5 that says “down to row 90”, then its link. Did it take you to row 90?',
    expected: 'yes',
    means: '“Find your team” at the top of a class sheet does not take students to their rows.',
    advice: 'Tell teams their rows, or let them search for their name.',
  },
  offers: {
    title: 'Offers while typing',
    asks: 'While you typed into the ten cells, did the sheet offer an entry from another row?',
    expected: 'no',
    means: 'Enter may take another team’s entry instead of what was typed.',
    advice:
      'Let students switch the offers off for themselves, under Tools, Autocomplete, or finish an entry with Escape first.',
  },
  corner: {
    title: 'A word that is not in the list',
    asks: 'In the scratch sheet, cell A28 has a list and holds “three”, which is not in it. Has it a red corner or another warning?',
    expected: 'no',
    means: 'Cells with a list, such as “Who”, warn at words of your own. They take them all the same.',
    advice: 'Tell the class that the corner means nothing.',
  },
  anybody: {
    title: 'Without signing in',
    asks: 'Only if you share by a link that asks for no account: in a private window, is an entry in the lesson checked?',
    expected: 'yes',
    means: 'Whoever does not sign in gets no checks. Their tries are not counted in any case.',
    advice: 'Share the file with school accounts only.',
  },
  hidden: {
    title: 'The hidden sheet',
    asks: 'From a student’s account: does View, Hidden sheets offer to show “Labrow teacher”?',
    expected: 'no',
    means: 'Students can see that sheet. It holds one sentence and no secret.',
    advice: 'Nothing has to be done.',
  },
  phone: {
    title: 'On a phone',
    asks: 'On a phone, in the app: after an entry, does the check beside it change?',
    expected: 'yes',
    means: 'Students on phones do not see their checks.',
    advice: 'Give each team one computer or tablet with a browser.',
  },
} as const satisfies Record<string, Question>;
export type QuestionName = keyof typeof questions;
