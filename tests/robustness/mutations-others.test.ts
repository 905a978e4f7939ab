/** Seeded damage to the other files of the samples, through every feature: pieces lost, doubled, swapped, and characters that YAML minds. */
import { mutationTests } from '../support/mutations';

mutationTests((name) => !/^(?:builds|faulty|references)\//.test(name));
