/** Commands about heads, nuts and washers; the only way in is the registered components. */
package org.fettlebench.command.internal.head;
