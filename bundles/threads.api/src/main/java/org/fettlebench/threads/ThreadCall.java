package org.fettlebench.threads;

import java.util.Optional;

/**
 * A thread as a drawing calls for it.
 *
 * @param thread of a series
 * @param threadClass the class written behind it, such as {@code 6g}, {@code 6H/6g}, {@code 2B},
 *     {@code medium}; empty if none was
 */
public record ThreadCall(ScrewThread thread, Optional<String> threadClass) {}
