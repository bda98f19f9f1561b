package org.fettlebench.tooling.risk;

import org.fettlebench.tables.Source;

/**
 * A figure that was taken to be so, to be shown with the answer.
 *
 * @param what such as {@code cutting resistance of mild steel}
 * @param figure with its unit and, where there is one, its range
 * @param source with its standing
 */
public record Assumed(String what, String figure, Source source) {}
