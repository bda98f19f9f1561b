package org.fettlebench.tooling.risk;

import java.util.List;
import org.fettlebench.measure.Length;

/**
 * The torque that a tap needs over the torque that breaks its core: a guide, not a promise. Above 1
 * the core gives way; sideways pull, packed chips and a jerk of the hand are in none of the
 * figures.
 *
 * @param job what was asked
 * @param percentOfThread that the hole leaves, by the convention of the form
 * @param flutes counted with
 * @param core diameter of the tap between its flutes, counted with
 * @param cuttingTorqueNm steady torque to cut, in newton metres, by the middle of the assumptions
 * @param breakingTorqueNm torque that breaks the core, by the middle of the assumptions
 * @param ratio cutting over breaking torque, by the middle of the assumptions
 * @param ratioLeast the same by the kindest assumptions
 * @param ratioMost the same by the hardest
 * @param verdict what {@code ratio} and {@code ratioMost} say
 * @param assumed every figure that was taken to be so, with its source
 * @param notes what the figures leave out, in words
 * @param cures what lowers the ratio, least first
 */
public record TapRisk(
    TapJob job,
    double percentOfThread,
    int flutes,
    Length core,
    double cuttingTorqueNm,
    double breakingTorqueNm,
    double ratio,
    double ratioLeast,
    double ratioMost,
    TapVerdict verdict,
    List<Assumed> assumed,
    List<String> notes,
    List<TapCure> cures) {
  /** Copies what could change. */
  public TapRisk {
    assumed = List.copyOf(assumed);
    notes = List.copyOf(notes);
    cures = List.copyOf(cures);
  }
}
