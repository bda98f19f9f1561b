/** Commands about ways of placing holes and how far holes were out. */
package org.fettlebench.command.internal.method;
