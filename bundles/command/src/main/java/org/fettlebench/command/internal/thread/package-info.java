/** Commands about threads; the only way in is the components registered as commands. */
package org.fettlebench.command.internal.thread;
