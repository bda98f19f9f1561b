/** Joints of one fastener: zones of position, edge distances, length of the screw. */
package org.fettlebench.command.internal.joint;
