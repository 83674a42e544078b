import type { Finding } from '../../desk/selfCheck/finding.ts';
import { selfCheckWords } from '../../desk/selfCheck/words.ts';

const { saw } = selfCheckWords;

/** What the page finds out about the frame that it stands in. */
export const widthFinding = (): Finding => {
  const pixels = window.innerWidth;
  return { name: 'width', verdict: pixels >= 280 && pixels <= 320 ? 'expected' : 'different', saw: saw.width(pixels) };
};

export function storageFinding(): Finding {
  const name = 'storage';
  try {
    sessionStorage.setItem(name, '1');
    const isKept = sessionStorage.getItem(name) === '1';
    sessionStorage.removeItem(name);
    if (isKept) return { name, verdict: 'expected', saw: saw.storageRight };
  } catch {
    // Refused, as in a private window.
  }
  return { name, verdict: 'different', saw: saw.storageWrong };
}

export const clipboardFinding = (by: 'clipboard' | 'older way' | 'nothing'): Finding => ({
  name: 'clipboard',
  verdict: by === 'nothing' ? 'different' : 'expected',
  saw: by === 'nothing' ? saw.clipboardWrong : by === 'clipboard' ? saw.clipboardRight : saw.clipboardOldWay,
});
