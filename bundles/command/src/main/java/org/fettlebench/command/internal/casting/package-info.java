/** Commands about rough castings. */
package org.fettlebench.command.internal.casting;
