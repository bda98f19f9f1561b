/** Chances, estimates and simulation; reached by the services of this package only. */
package org.fettlebench.holes.internal.chance;
