package org.fettlebench.command.internal;

import java.io.InputStream;
import java.io.PrintStream;

/**
 * Where a call comes from.
 *
 * @param folder where the person stands
 * @param in what is piped in
 * @param err where is told how far long work is
 */
record Place(String folder, InputStream in, PrintStream err) {}
