/**
 * Shows one page or widget alone, for tests and for trying a page out without the suite. Not
 * exported: it is used from the class path.
 */
package org.fettlebench.desktop.widgets.trial;
