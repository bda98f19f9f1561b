/**
 * The threads and drills page: how large is a thread, and which drill makes its hole? The way in is
 * the page service.
 */
package org.fettlebench.desktop.threads.internal;
