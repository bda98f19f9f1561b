/** Commands about drills and holes; the only way in is the components registered as commands. */
package org.fettlebench.command.internal.hole;
