import { startDesk } from './desk.ts';

startDesk(new URLSearchParams(window.location.search).get('seat') === 'student' ? 'student' : 'teacher');
