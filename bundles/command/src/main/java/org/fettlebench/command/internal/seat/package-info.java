/** The command about one seat; the only way in is the registered component. */
package org.fettlebench.command.internal.seat;
