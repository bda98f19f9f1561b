package org.fettlebench.command.internal.tap;

import org.fettlebench.measure.Length;

/**
 * The hole that is tapped.
 *
 * @param diameter of it
 * @param name of the drill, or what stands for it
 * @param why how it was come by, in words
 */
record TapHole(Length diameter, String name, String why) {}
