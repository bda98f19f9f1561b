/** Watches the framework's bundles; the only ways in are the services Modules and Faults. */
package org.fettlebench.modules.internal;
