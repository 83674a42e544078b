import { startDesk } from './desk.ts';

const address = new URLSearchParams(window.location.search);
startDesk(address.get('seat') === 'student' ? 'student' : 'teacher', { offersEarlier: address.has('offers') });
