package org.fettlebench.command.internal;

import java.io.InputStream;

/**
 * Where a call comes from.
 *
 * @param folder where the person stands
 * @param in what is piped in
 */
record Place(String folder, InputStream in) {}
