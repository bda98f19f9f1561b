/** What the packages below share. */
package org.fettlebench.holes.internal;
