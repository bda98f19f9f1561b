/**
 * Commands about where a hole is and where it shall be; the only way in is the registered
 * components.
 */
package org.fettlebench.command.internal.holeplace;
