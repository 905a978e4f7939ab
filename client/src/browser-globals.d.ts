/** The one global of a browser that the extension uses and Node's types don't have; nothing else of the page is touched. */
declare class Worker {
  constructor(url: string, options?: { name?: string });
  onmessage: ((event: { readonly data: unknown }) => void) | null;
  onerror: ((event: { readonly message?: string }) => void) | null;
  postMessage(message: unknown): void;
  terminate(): void;
}
