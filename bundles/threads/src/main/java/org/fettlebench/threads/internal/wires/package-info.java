/** Measuring over wires; the way in is the service. */
package org.fettlebench.threads.internal.wires;
