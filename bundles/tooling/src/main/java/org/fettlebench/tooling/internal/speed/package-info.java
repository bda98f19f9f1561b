/** Spindle speeds out of tables; reached through {@code SpindleSpeeds}. */
package org.fettlebench.tooling.internal.speed;
