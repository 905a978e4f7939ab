/** The little of WebAssembly that the solver is loaded by; every host has it, the types of Node 20 don't. */
declare namespace WebAssembly {
  type Imports = Record<string, Record<string, unknown>>;
  interface Module {
    readonly [Symbol.toStringTag]: string;
  }
  class Instance {
    constructor(module: Module, imports: Imports);
  }
  function compile(bytes: ArrayBuffer): Promise<Module>;
}
