/** What is folded below a thread: limits, strength, tap risk, spindle speed, wires. */
package org.fettlebench.desktop.threads.internal.folds;
