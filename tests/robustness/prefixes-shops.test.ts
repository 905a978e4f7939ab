/** Every beginning of the sample shops file, with LF and CRLF, through every feature. */
import { prefixTests } from '../support/prefixes';

prefixTests((name) => name.startsWith('shops'));
