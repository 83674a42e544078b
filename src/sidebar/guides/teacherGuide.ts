import { texts } from '../texts.ts';
import type { Guide } from './guide.ts';

const { views, plan, teams } = texts;
const { summary: helpAndTask } = teams.ownHelp;

const checksEmpty = 'If checks stay empty for students';

export const teacherGuide: Guide = {
  title: 'Your first lesson, in ten minutes',
  about: 'For a teacher who opens the file for the first time.',
  parts: [
    {
      title: 'Before the lesson',
      steps: [
        'In the spreadsheet, open the menu Labrow and choose to open the sidebar.',
        `In “${views.plan}”, choose the activity and the substance. The lesson that is set at the start is a good first one: make a solution from a solid, then dilute it.`,
        'Type the names of your classes and how many teams each has. Everything else can stay as it is.',
        'Build the table. Every team now has rows and numbers of its own.',
        `In “${views.prepare}”, print the list for the lab, the labels and the key. Read the cautions, and the safety data sheet of every substance.`,
        `Share the file so that your students may edit it, with school accounts only. “${texts.sheets.linksTitle}” in “${views.sheets}” has a link for each class, with a picture to scan: send it, project it or print it.`,
        `Try it once from a student’s account: type a wrong number in a team’s row and see that a check appears. If none does, read “${checksEmpty}” below.`,
      ],
    },
    {
      title: 'In the lesson',
      lines: [
        'Each team finds its name at the top of its class’s sheet and types in its own rows. Beside each entry it reads at once whether that row is right and, if not, what to look at.',
        `Keep “${views.classNow}” open. It says which team to talk to first, and about what. Progress is the sheet for the projector: it says how far each team is, and nothing that would embarrass anybody.`,
        `“${views.teams}” adds a team that comes late and marks who is absent. Nobody else’s rows move.`,
        `A team that finishes early gets a question in “${views.classNow}”. Under “${helpAndTask({ level: '', hasTask: false })}” in “${views.teams}” you can give one team a task of its own, or less help than the others.`,
        `“${plan.exitQuestions}” in the plan gives each student one question at the end, with numbers of their own. “${views.classNow}” shows you counts and what answers have in common; the class sees its checks when you choose.`,
        'A team that is stuck asks for help in its row: 1 for the idea, 2 for the relation, 3 for the set-up with its own numbers. No hint gives the answer.',
        'Where a substance has the signal word Danger, two short questions stand below the cautions, about a splash and about leftovers. The bench rows open once both answers are right. You can ask them always or never.',
        `“${plan.safety}” in the plan also shows the cautions in Spanish below the English text, and can ask each team for evidence: both balance readings, one observation and a link to a picture.`,
        `At the bell, “Close at the bell” in “${views.classNow}” stops the open rows from asking and notes in the Record where teams go on. The same button opens them again next time.`,
        'Change a number in the Plan sheet, and the checks and hints of that team follow at once. A line above its rows then asks the team to read its numbers again.',
      ],
    },
    {
      title: 'After the lesson',
      lines: [
        `“${views.particles}” shows what the numbers mean: equal volumes before and after the dilution, as a page to project.`,
        `“${views.poll}” asks the class how it went, in four short statements.`,
        `“${views.record}” writes the day’s entry for your school. Read it, change what you like, keep it.`,
      ],
    },
    {
      title: 'Over a term',
      lines: [
        `“${texts.next.button}” in “${views.plan}” begins the next one for the classes that you tick. Teams and their people go along; the lesson before is put away with all its entries, and “${texts.next.earlier}” brings it back.`,
        `A student who missed the lesson gets a block of their own: “${teams.practice.title}” in “${views.teams}” adds the same lesson with numbers that no team has. It is in no count and not in the Record.`,
        `When you are away, print “${texts.pages.cover.title}” in “${views.prepare}”: how it runs, the cautions, where each class is, and lines to write down who was missing. It has no answers.`,
        `For a new term, “${views.share}” empties a copy of the file and can keep the names of your classes and teams.`,
        `The sample can go once you have a lesson of your own: “${plan.sample.out}” in “${views.plan}” removes its sheets, poll answers and rows.`,
      ],
    },
    {
      title: checksEmpty,
      lines: [
        'Some schools do not let functions run on students’ accounts. To find out in one minute, open the file with a student’s account and type a wrong number in a team’s row, such as 1 for the molar mass.',
        `If the check stays empty or shows an error, open “${plan.checks}” in “${views.plan}”, set “${plan.checksFrom}” to “${plan.checksFroms.sidebar}”, and build again.`,
        'Then keep the sidebar open, in a tab that you can see, for as long as the class works. A check comes within fifteen seconds, and tries and times are noted as far as the sidebar has seen them.',
      ],
    },
    {
      title: 'What your students see',
      lines: [
        `The sheet of their class, the Poll and Progress. Plan, Prepare and Help are hidden, and “${views.sheets}” opens them for you. No sheet holds answers, a key or a list of slips: those are in your sidebar and on your paper only.`,
        'The words of a check: on target, close (right but for rounding), follows (right, but an earlier row needs a look), not yet, blank, unreadable. Each stands beside a sentence that says what to look at.',
        'Two more words: next time, for a row that was open at the bell, and kept, for an exit question until you show its check.',
        'Students install nothing and are asked for nothing.',
      ],
    },
    {
      title: 'What protection does not do',
      lines: [
        'Hidden sheets are not secret. Assume that anyone who can edit the file can show and read them.',
        'Protected cells warn before they are changed. They guard against accidents, not against intent: whoever may edit the file can also edit another team’s rows.',
        'This is for practice and not for tests. Our functions answer whoever types them into a cell, and whoever may edit a file can read the script that belongs to it.',
        'Checks look at numbers, not at the bench. The safety data sheet, local rules and your school’s own assessment decide what is done, and who does it.',
      ],
    },
  ],
};
