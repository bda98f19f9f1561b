/**
 * What the page's parts are made of: tables of figures that can be copied, and folds that remember
 * whether they are open.
 */
package org.fettlebench.desktop.threads.internal.sheet;
