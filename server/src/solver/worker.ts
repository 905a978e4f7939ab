/** The solver in a web worker: solves the one program that it is sent, with the WebAssembly that it is sent. Fetches nothing. */
import { loadSolver } from './load';

interface Port {
  onmessage: (message: {
    readonly data: { readonly program: string; readonly seconds: number; readonly wasm: ArrayBuffer };
  }) => void;
  postMessage(answer: unknown): void;
}

const port = globalThis as unknown as Port;

port.onmessage = ({ data: { program, seconds, wasm } }) => {
  loadSolver(wasm)
    .then((solver) => solver(program, seconds))
    .then(
      (solved) => port.postMessage({ solved }),
      // A rejected promise in a worker is seen by nobody unless it is sent.
      (error: unknown) => port.postMessage({ failed: String(error) }),
    );
};
