/**
 * What is cut: the coarse materials by which tables of speeds, torques and per cents are read.
 *
 * <p>{@code WorkMaterials} is offered by the suite. Everything is immutable and may be used from
 * any thread; no null is taken or returned; what is not there is an empty {@code Optional}.
 *
 * <h2>Tables of kind {@code work-materials}</h2>
 *
 * <p>Columns {@code id}, {@code name} and {@code aliases}: other names, parted by semicolons;
 * {@code taken_as} (may be blank): id of the material that stands in where a table has no figures
 * for this one. Of two materials with one id, and of two with one name, a club's goes before the
 * suite's own.
 *
 * <pre>
 * # kind: work-materials
 * # id: our-castings
 * # title: What our foundry pours
 * # source: club note
 * # standing: measured by the club
 * id,name,aliases,taken_as
 * hard-iron,hard grey iron,gi-hard; clinker iron,cast-iron
 * </pre>
 */
@Export
@Version("1.0.0")
package org.fettlebench.tooling.work;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
