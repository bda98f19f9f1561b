/** The torque of tapping against what breaks the tap; reached through {@code TapRisks}. */
package org.fettlebench.tooling.internal.risk;
