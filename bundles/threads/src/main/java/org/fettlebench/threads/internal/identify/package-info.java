/** Naming threads from measurements; the way in is the service. */
package org.fettlebench.threads.internal.identify;
