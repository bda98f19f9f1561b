/** Benchmarks, one class a subject, and the small program that runs them. */
package org.fettlebench.benchmarks;
