/** Every beginning of every sample build, bench and settings file, with LF and CRLF, through every feature: half-typed is the normal state. */
import { prefixTests } from '../support/prefixes';

prefixTests((name) => !/^(parts|references|shops)\b/.test(name));
