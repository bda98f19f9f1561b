/** The materials that are cut, out of tables; reached through {@code WorkMaterials}. */
package org.fettlebench.tooling.internal.work;
