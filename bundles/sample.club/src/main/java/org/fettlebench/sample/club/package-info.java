/** A club's own module: what this sample does, any club may do in its own bundle. */
package org.fettlebench.sample.club;
