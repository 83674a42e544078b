import { spawn } from 'node:child_process';

/** Whether a browser that this opens would be seen by anybody. */
export function hasDisplay(environment: NodeJS.ProcessEnv = process.env, platform: string = process.platform): boolean {
  if (environment.CI) return false;
  if (platform === 'darwin' || platform === 'win32') return !environment.SSH_CONNECTION;
  return Boolean(environment.DISPLAY || environment.WAYLAND_DISPLAY);
}

/** Opens an address in the reader's own browser; where that fails the printed address is enough. */
export function openBrowser(url: string): void {
  const [command, ...args] =
    process.platform === 'darwin'
      ? ['open', url]
      : process.platform === 'win32'
        ? ['cmd', '/c', 'start', '', url]
        : ['xdg-open', url];
  const child = spawn(command ?? 'xdg-open', args, { stdio: 'ignore', detached: true });
  child.on('error', () => undefined);
  child.unref();
}
