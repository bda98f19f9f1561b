/** Commands that draw charts for the wall. */
package org.fettlebench.command.internal.chart;
