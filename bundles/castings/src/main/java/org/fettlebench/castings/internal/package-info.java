/** Places finished parts inside rough castings; the only way in are its services. */
package org.fettlebench.castings.internal;
