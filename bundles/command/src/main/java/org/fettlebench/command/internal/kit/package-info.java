/** Commands about kits; the only way in is the registered components. */
package org.fettlebench.command.internal.kit;
