/** Two threads laid over each other: does one go into the other, and where does it bind? */
package org.fettlebench.desktop.threads.internal.compare;
