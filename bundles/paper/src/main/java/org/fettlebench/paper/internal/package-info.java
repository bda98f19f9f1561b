/** Writes bench cards and reports as PDF. The way in is the service {@code BenchCards}. */
package org.fettlebench.paper.internal;
