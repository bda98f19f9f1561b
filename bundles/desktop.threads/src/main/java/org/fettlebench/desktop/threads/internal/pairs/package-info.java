/** Every pair of threads that a person could cross. */
package org.fettlebench.desktop.threads.internal.pairs;
