/** Commands about the suite itself; the only way in is the registered components. */
package org.fettlebench.command.internal.suite;
