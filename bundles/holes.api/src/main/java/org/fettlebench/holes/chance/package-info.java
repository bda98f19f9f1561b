/**
 * Where will a hole land, and what is the chance that it lands well enough?
 *
 * <p>All lengths are {@code double} millimetres; errors are radii of position error or co-ordinates
 * along x and y, never diameters of a zone; chances lie between 0 and 1. Every chance says how it
 * was found and how far it may be out. Everything is immutable and may be used from any thread;
 * what is simulated takes its seed from the caller, so that the same call gives the same answer. No
 * null is taken or returned.
 */
@Export
@Version("1.0.0")
package org.fettlebench.holes.chance;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
