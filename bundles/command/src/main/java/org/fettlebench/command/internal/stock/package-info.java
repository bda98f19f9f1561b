/** Commands about stock and tools on loan; the only way in is the registered components. */
package org.fettlebench.command.internal.stock;
