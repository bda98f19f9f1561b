package org.fettlebench.tooling.risk;

/**
 * Something that lowers the torque, worked out anew.
 *
 * @param words what to do, such as {@code drill 4.1 mm instead: 64 per cent of thread}
 * @param job the job so changed
 * @param cuttingTorqueNm torque of it, in newton metres
 * @param ratio torque over what breaks the tap, by the middle of the assumptions
 * @param ratioMost the same by the assumptions hardest on the tap
 */
public record TapCure(
    String words, TapJob job, double cuttingTorqueNm, double ratio, double ratioMost) {}
