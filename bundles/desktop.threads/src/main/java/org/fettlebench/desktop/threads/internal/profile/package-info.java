/** The outline of a thread, to scale, as every drawing of the page has it. */
package org.fettlebench.desktop.threads.internal.profile;
