/**
 * The window: its pages, find box, status line and what it remembers. The only ways in are the
 * services that the launcher calls and the pages that bundles register.
 */
package org.fettlebench.desktop.internal;
