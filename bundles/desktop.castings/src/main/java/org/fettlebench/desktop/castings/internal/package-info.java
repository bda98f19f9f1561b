/** The page Casting; {@code CastingPage} is the only way in. */
package org.fettlebench.desktop.castings.internal;
