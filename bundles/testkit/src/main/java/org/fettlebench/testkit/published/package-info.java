/**
 * Published tables in tests, with an account of their cells: a test that looks at a table must
 * either hold each printed figure against what the suite gives, or refuse it with a reason, which
 * fails as soon as there is nothing to refuse. A row that is passed over, or a column that nobody
 * looks at, fails the test; so rows added to a table cannot go unread.
 *
 * <p>The way in is {@link org.fettlebench.testkit.published.PublishedTable}.
 */
package org.fettlebench.testkit.published;
