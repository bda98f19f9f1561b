/**
 * What tests of several bundles need: a real Felix with Declarative Services inside a JUnit test
 * ({@link org.fettlebench.testkit.FelixHarness}), small bundles made on the spot ({@link
 * org.fettlebench.testkit.BundleJar}), and a hand on the mouse and keyboard of a screen ({@link
 * org.fettlebench.testkit.ScreenRobot}).
 *
 * <p>A plain library for the tests' class path, never part of the product. Nothing here sleeps: it
 * waits for what was asked, at most ten seconds unless told otherwise, and a failure says what was
 * missing.
 */
package org.fettlebench.testkit;
