import type { SafetyQuestion } from './safetyQuestion.ts';

/**
 * What a splash can do, and what comes first. Usual first aid of schools (common practice), which says in our own words what
 * precautionary statements of the GHS ask for: P305+P351+P338 (eyes: rinse for several minutes, lenses out, go on rinsing),
 * P302+P352 (skin: wash with plenty of water), P303+P361+P353 (clothing off, rinse skin); UN GHS, Annex 3, from memory. No
 * time is named, since data sheets and local rules differ; what comes next is for the teacher.
 */
export const splash: SafetyQuestion<'serious' | 'through skin' | 'mild' | 'wait'> = {
  name: 'splash',
  stem: [{ given: 'formula' }, ' on skin or in an eye: how bad can it be, and what comes first?'],
  options: [
    {
      id: 'serious',
      text: 'serious: rinse at once, call for help',
      right:
        'Yes. Rinse at once and go on for many minutes, wet clothes and contact lenses off, while someone calls your teacher. The safety data sheet says what comes next.',
      ask: 'Acting fast is never wrong. How strong are the words of the caution row?',
    },
    {
      id: 'through skin',
      text: 'harm through skin: wash, call for help',
      right:
        'Yes. Wet clothes off, wash at once with plenty of water, and call your teacher even if nothing hurts. The safety data sheet says what comes next.',
      ask: 'Look at the caution row again. Which part of the body does it name first?',
    },
    {
      id: 'mild',
      text: 'mild: rinse at once, tell the teacher',
      right:
        'Yes. Rinse at once with plenty of water, an eye for several minutes, contact lenses out. Your teacher decides whether that is enough.',
      ask: 'Read the caution row again. Would you call that mild?',
    },
    {
      id: 'wait',
      text: 'wait and see whether it hurts',
      ask: 'Harm can begin before it hurts. What does the caution row say that it can do?',
    },
  ],
};
