interface HostWindow {
  readonly google?: { readonly script?: { readonly host?: { close?(): void } } };
}

/** Closes the page or the panel that this script runs in. Where another has taken its place already, nothing happens. */
export function closePanel(): void {
  (window as unknown as HostWindow).google?.script?.host?.close?.();
}
