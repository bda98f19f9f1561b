/**
 * The kit check and the readers of files. The ways in are the services of {@code
 * org.fettlebench.kits}; the rules that come with the suite are in here too.
 */
package org.fettlebench.kits.internal;
