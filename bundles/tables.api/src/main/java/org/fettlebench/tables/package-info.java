/**
 * Published tables with their sources: the table file format, its reader and the registry.
 *
 * <p>A bundle carries tables as files {@code FETTLEBENCH/tables/*.csv}, in UTF-8. They are taken up
 * when the bundle starts and forgotten when it stops; no code is needed. A file looks so:
 *
 * <pre>
 * # kind: thread-series
 * # id: FINE32
 * # title: Our 32 threads per inch
 * # source: club drawing 14
 * # standing: measured by the club
 * # form: whitworth
 * # designation: {size} x {tpi} FINE32
 * ## a remark
 * size,major_in,tpi,note,source,standing
 * 1/4,1/4,32,,,
 * 5/16,5/16,32,for unions,tap maker's drawing,published
 * </pre>
 *
 * <p>Header: lines {@code # key: value}. {@code kind} (what the rows are), {@code id} (unique in
 * its kind), {@code title}, {@code source} and {@code standing} must be there, each once; a table
 * that does not say where its figures come from is refused. The words of a standing are those of
 * {@link org.fettlebench.tables.Standing}. Each kind may ask for further keys. Lines {@code ## ...}
 * are remarks. Under the header stands one line of column names, then the rows, one a line, comma
 * separated as RFC 4180 has it, a cell with a comma in quotes; every row has as many cells as there
 * are columns; blank lines are passed over. A blank cell is absent.
 *
 * <p>Units stand in column names: {@code _mm} for decimal millimetres, {@code _in} for inches as
 * decimals or fractions ({@code 1 3/8}). Columns {@code source}, {@code standing} and {@code note}
 * of a row stand over those of the table.
 *
 * <p>{@link org.fettlebench.tables.TableFile} reads one file and gathers all its faults with their
 * lines in one {@link org.fettlebench.tables.TableFormatException}; what a cell means is found by
 * {@link org.fettlebench.tables.Table.Row}, which names line and column. {@link
 * org.fettlebench.tables.Tables} is the registry over all started bundles: of two tables of one
 * kind and id the suite's own stands, else the first by module, and the other is reported as a
 * fault of its module. {@link org.fettlebench.tables.FixedTables} does without a framework.
 *
 * <p>All values are immutable and may be used from any thread. No null is taken or returned.
 */
@Export
@Version("1.1.0")
package org.fettlebench.tables;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
