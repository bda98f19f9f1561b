/**
 * The command line: finds the asked command, takes its words apart, prints its answer. The only way
 * in is the service of {@link org.fettlebench.command.internal.Runner}.
 */
package org.fettlebench.command.internal;
