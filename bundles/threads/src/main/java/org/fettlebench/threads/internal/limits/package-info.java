/** The standards' limits of threads; the way in is {@code LimitRules}. */
package org.fettlebench.threads.internal.limits;
