/** Commands about tapping. */
package org.fettlebench.command.internal.tap;
