/**
 * The Modules page: what is installed, what it adds, whether it works. The only way in is the page
 * that it registers.
 */
package org.fettlebench.desktop.modules.internal;
