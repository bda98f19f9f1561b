/**
 * Makes thread series out of tables and finds threads by designation. The only way in is {@link
 * org.fettlebench.threads.internal.ThreadRegistry}.
 */
package org.fettlebench.threads.internal;
