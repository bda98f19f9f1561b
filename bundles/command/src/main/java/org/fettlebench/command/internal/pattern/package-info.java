/** Patterns of holes in two parts. */
package org.fettlebench.command.internal.pattern;
