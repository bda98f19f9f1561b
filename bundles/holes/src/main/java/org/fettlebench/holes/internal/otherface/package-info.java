/** Marks on the far face; reached by the service of this package only. */
package org.fettlebench.holes.internal.otherface;
