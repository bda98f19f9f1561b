/**
 * Patterns of holes in two parts: chance, clearance wanted, fit as measured. Reached by the
 * services of {@code org.fettlebench.holes.patterns} only.
 */
package org.fettlebench.holes.internal.patterns;
