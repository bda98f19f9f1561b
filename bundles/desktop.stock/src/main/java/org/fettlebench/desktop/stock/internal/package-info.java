/**
 * The stock page: what have we, how many, where, and who has it? The way in is the page service.
 */
package org.fettlebench.desktop.stock.internal;
