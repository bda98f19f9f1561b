/** The kit check page: can this kit be built? The way in is the page service. */
package org.fettlebench.desktop.kits.internal;
