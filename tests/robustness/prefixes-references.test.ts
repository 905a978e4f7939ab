/** Every beginning of every sample of a reference craft, with LF and CRLF, through every feature. */
import { prefixTests } from '../support/prefixes';

prefixTests((name) => name.startsWith('references/'));
