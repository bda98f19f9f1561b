/** Contributions that fail, each in its own way. */
package org.fettlebench.sample.faulty;
