/** How drilled holes come out, by tables. The only way in is {@code DrilledHoleService}. */
package org.fettlebench.tooling.internal.drilled;
