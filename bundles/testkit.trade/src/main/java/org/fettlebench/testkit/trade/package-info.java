/** The suite's own providers over the shipped tables, for tests; see {@link RealTrade}. */
package org.fettlebench.testkit.trade;
