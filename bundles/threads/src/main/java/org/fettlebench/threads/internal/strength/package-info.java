/** Materials and the strength of threads; the ways in are the two services. */
package org.fettlebench.threads.internal.strength;
