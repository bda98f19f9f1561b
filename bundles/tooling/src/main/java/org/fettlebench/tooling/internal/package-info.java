/**
 * Drill systems, tapping and clearance choice, blind-hole depths. The only ways in are {@link
 * org.fettlebench.tooling.internal.DrillRegistry} and {@link
 * org.fettlebench.tooling.internal.HoleChoice}.
 */
package org.fettlebench.tooling.internal;
