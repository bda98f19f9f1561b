package org.fettlebench.paper.internal;

/**
 * The head of a wall chart.
 *
 * @param words the largest line
 * @param under what it is for, under it
 * @param caution at the foot of every sheet
 */
record ChartTitle(String words, String under, String caution) {}
