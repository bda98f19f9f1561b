/**
 * The invented club. The way in is the service {@code DemoClub}; the commands beside it are {@code
 * demo load} and {@code demo check}.
 */
package org.fettlebench.demo.internal;
