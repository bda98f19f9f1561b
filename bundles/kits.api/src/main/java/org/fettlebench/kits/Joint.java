package org.fettlebench.kits;

import java.util.Optional;
import org.fettlebench.fits.Seat;
import org.fettlebench.fits.SeatedHead;
import org.fettlebench.fits.Spanner;
import org.fettlebench.measure.Length;
import org.fettlebench.tooling.ClearanceFit;
import org.fettlebench.tooling.TapLead;

/**
 * A place where a fastener goes: what it passes through, what it screws into, what it sits on.
 *
 * @param name unique within the kit; not blank
 * @param part the part it belongs to
 * @param count how many equal fasteners; at least 1
 * @param fastener what the kit means to be used
 * @param clearance the plain hole it passes through, if any
 * @param tapped the threaded hole it screws into, if any
 * @param seat the flat the head sits on, if it was measured
 * @param method id of the way in which the hole will be placed; needed where there is a seat
 * @param holdsPressure whether the joint holds steam or other pressure
 * @param note for people; may be empty
 * @param line where the joint stands in its file, from 1; 0 when it came from no file
 * @param dress what goes with the head
 */
public record Joint(
    String name,
    String part,
    int count,
    Fastener fastener,
    Optional<ClearanceHole> clearance,
    Optional<TappedHole> tapped,
    Optional<Seat> seat,
    Optional<String> method,
    boolean holdsPressure,
    String note,
    int line,
    Dress dress) {
  /**
   * Checks the figures.
   *
   * @throws IllegalArgumentException if the name is blank, the count below 1 or the line below 0
   */
  public Joint {
    Require.name("name of a joint", name);
    Require.atLeast("count of joint " + name, count, 1);
    Require.atLeast("line of joint " + name, line, 0);
  }

  /** Makes a joint whose head sits bare, with no room asked for a spanner. */
  @SuppressWarnings("checkstyle:ParameterNumber")
  public Joint(
      String name,
      String part,
      int count,
      Fastener fastener,
      Optional<ClearanceHole> clearance,
      Optional<TappedHole> tapped,
      Optional<Seat> seat,
      Optional<String> method,
      boolean holdsPressure,
      String note,
      int line) {
    this(
        name,
        part,
        count,
        fastener,
        clearance,
        tapped,
        seat,
        method,
        holdsPressure,
        note,
        line,
        Dress.NONE);
  }

  /**
   * What goes with a head, or with a stud's nut.
   *
   * @param washer under it
   * @param spanner that must have room to turn it
   */
  public record Dress(Optional<SeatedHead.Washer> washer, Optional<Spanner> spanner) {
    /** No washer, and no room asked for a spanner. */
    public static final Dress NONE = new Dress(Optional.empty(), Optional.empty());

    /** Returns a bare head with what goes with it. */
    public SeatedHead on(SeatedHead bare) {
      SeatedHead seated = washer.map(bare::withWasher).orElse(bare);
      return spanner.map(seated::withSpanner).orElse(seated);
    }
  }

  /**
   * A plain hole.
   *
   * @param fit wanted
   * @param depth thickness of what is passed through, above 0; where known
   * @param drilled diameter when it is already there, above 0
   */
  public record ClearanceHole(ClearanceFit fit, Optional<Length> depth, Optional<Length> drilled) {
    /**
     * Checks the figures.
     *
     * @throws IllegalArgumentException if a length is not above 0
     */
    public ClearanceHole {
      depth.ifPresent(value -> Require.positive("depth of a clearance hole", value));
      drilled.ifPresent(value -> Require.positive("diameter of a clearance hole", value));
    }
  }

  /**
   * A threaded hole.
   *
   * @param material tapped; not blank
   * @param fullThread depth of full thread wanted, above 0
   * @param metal thickness of metal from the face, above 0, when the hole must stay blind
   * @param lead of the last tap that reaches the thread's end
   * @param percent of thread wanted, above 0 to 100; empty takes the usual one for the material
   * @param drilled diameter when it is already there, above 0
   */
  public record TappedHole(
      String material,
      Length fullThread,
      Optional<Length> metal,
      TapLead lead,
      Optional<Double> percent,
      Optional<Length> drilled) {
    /**
     * Checks the figures.
     *
     * @throws IllegalArgumentException if the material is blank, a length not above 0 or the per
     *     cent out of range
     */
    public TappedHole {
      Require.name("material of a tapped hole", material);
      Require.positive("depth of full thread", fullThread);
      metal.ifPresent(value -> Require.positive("metal under a tapped hole", value));
      percent.ifPresent(value -> Require.between("per cent of thread", value, 0, 100));
      drilled.ifPresent(value -> Require.positive("diameter of a hole to tap", value));
    }
  }
}
