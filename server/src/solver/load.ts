/** The mixed-integer solver, loaded when an order is asked for and not before. Its WebAssembly lies beside its bundle, or is given by who knows where it is. */
import loadHighs from 'highs';
import type { Solved, Solver } from '../plan/order-solve';

/** Status numbers of the solver that are told apart here. */
const status = { optimal: 7, infeasible: 8, timeLimit: 13 } as const;

export async function loadSolver(wasm?: ArrayBuffer): Promise<Solver> {
  const highs = await loadHighs(wasm && (await given(wasm)));
  return async (program, seconds) =>
    highs.withModel({ format: 'lp', data: program }, (model): Solved => {
      model.options.set('output_flag', false);
      model.options.set('time_limit', seconds);
      model.options.set('mip_rel_gap', 0);
      // Whole cents: less than one of them is no difference.
      model.options.set('mip_abs_gap', 0.5);
      model.options.set('mip_feasibility_tolerance', 1e-9);
      model.options.set('primal_feasibility_tolerance', 1e-9);
      const known = Number(model.run().modelStatus);
      if (known === status.infeasible) return { status: 'infeasible' };
      const stopped = known !== status.optimal;
      if (stopped && (known !== status.timeLimit || Number(model.info.get('primal_solution_status')) !== 2))
        return { status: 'unsolved' };
      const bound = Number(model.info.get('mip_dual_bound'));
      return {
        status: stopped ? 'stopped' : 'optimal',
        bound: Number.isFinite(bound) ? bound : 0,
        // Read out before the model is given back.
        values: [...model.getSolution().colValue].map((value, i) => [model.getColName(i), value] as const),
      };
    });
}

/** The package's own options for given bytes are declared but not read in this version; the hook of its loader below them is. */
async function given(wasm: ArrayBuffer): Promise<object> {
  const compiled = await WebAssembly.compile(wasm);
  return {
    instantiateWasm: (imports: WebAssembly.Imports, done: (instance: WebAssembly.Instance) => void) =>
      done(new WebAssembly.Instance(compiled, imports)),
  };
}
