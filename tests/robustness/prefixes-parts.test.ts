/** Every beginning of every sample parts file, with LF and CRLF, through every feature. */
import { prefixTests } from '../support/prefixes';

prefixTests((name) => name.startsWith('parts/'));
