/** Which thread is this? From what was measured, with the one it is easily taken for beside it. */
package org.fettlebench.desktop.threads.internal.identify;
