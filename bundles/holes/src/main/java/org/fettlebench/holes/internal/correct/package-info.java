/** Pilots, readings and corrections; reached by the services of this package only. */
package org.fettlebench.holes.internal.correct;
