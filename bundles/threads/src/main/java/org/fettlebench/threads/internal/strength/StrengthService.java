package org.fettlebench.threads.internal.strength;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.MeasureException;
import org.fettlebench.tables.Source;
import org.fettlebench.tables.Standing;
import org.fettlebench.threads.LimitsOfThread;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.threads.ThreadClasses;
import org.fettlebench.threads.ThreadForm;
import org.fettlebench.threads.ThreadSide;
import org.fettlebench.threads.strength.GivesWay;
import org.fettlebench.threads.strength.JointStrength;
import org.fettlebench.threads.strength.Material;
import org.fettlebench.threads.strength.StressArea;
import org.fettlebench.threads.strength.ThreadStrength;
import org.fettlebench.threads.strength.ThreadedJoint;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Works out strengths from the limits of the thread's class. */
@Component
public final class StrengthService implements ThreadStrength {
  private static final Source ISO_AREA =
      new Source("ISO 898-1: pi/4 ((d2 + d3)/2)^2", Standing.RULE);
  private static final Source ASME_AREA =
      new Source("ASME B1.1: pi (E/2 - 3/16 H)^2, E to 0.0001 in", Standing.RULE);
  private static final Source MEAN_AREA =
      new Source(
          "pi/4 of the square of the mean of effective and minor diameter",
          Standing.COMMON_PRACTICE);

  private static final double MM_PER_INCH = 25.4;

  private final ThreadClasses classes;

  /** Takes the limits of the classes. */
  @Activate
  public StrengthService(@Reference ThreadClasses classes) {
    this.classes = classes;
  }

  @Override
  public StressArea stressArea(ScrewThread thread) {
    if (thread.form() == ThreadForm.UNIFIED) {
      // With E as printed, to 0.0001 in, the printed areas of the smallest threads come out.
      double effective = Math.round(thread.effective().inches() * 1e4) / 1e4 * MM_PER_INCH;
      double height = thread.form().triangleHeightPerPitch() * thread.pitch().millimetres();
      double across = effective - 3.0 / 8 * height;
      return new StressArea(circle(across), ASME_AREA);
    }
    double across = (thread.effective().millimetres() + thread.minorExternal().millimetres()) / 2;
    return new StressArea(circle(across), thread.form() == ThreadForm.ISO ? ISO_AREA : MEAN_AREA);
  }

  private static double circle(double across) {
    return Math.PI / 4 * across * across;
  }

  /** The weakest sizes allowed, in millimetres. */
  private record Worst(double major, double screwEffective, double nutEffective, double minor) {}

  @Override
  public JointStrength of(ThreadedJoint joint) {
    List<String> notes = new ArrayList<>();
    Worst worst = worst(joint, notes);
    ThreadForm form = joint.thread().form();
    double pitch = joint.thread().pitch().millimetres();
    double perMmScrew = ShearArea.ofScrew(form, pitch, worst.screwEffective(), worst.minor());
    double perMmNut = ShearArea.ofNut(form, pitch, worst.major(), worst.nutEffective());
    if (!(perMmScrew > 0 && worst.minor() < worst.major())) {
      throw new MeasureException(
          String.format(
              Locale.ROOT,
              "a hole of %.3f mm is too large: the screw's thread of %.3f mm does not reach its sides",
              worst.minor(),
              worst.major()));
    }
    StressArea area = stressArea(joint.thread());
    double engaged = joint.engagement().millimetres();
    double breaks = area.mm2() * joint.screw().tensileMpa();
    double perMmScrewN = perMmScrew * joint.screw().threadShearMpa();
    double perMmNutN = perMmNut * joint.nut().threadShearMpa();
    notes.add(shear("screw", joint.screw()));
    notes.add(shear("nut", joint.nut()));
    double least = breaks / Math.min(perMmScrewN, perMmNutN);
    return new JointStrength(
        joint,
        area,
        perMmScrew * engaged,
        perMmNut * engaged,
        breaks,
        perMmScrewN * engaged,
        perMmNutN * engaged,
        first(breaks, perMmScrewN * engaged, perMmNutN * engaged),
        Length.ofMillimetres(least),
        notes);
  }

  private static GivesWay first(double breaks, double screwStrips, double nutStrips) {
    if (breaks <= Math.min(screwStrips, nutStrips)) {
      return GivesWay.SCREW_BREAKS;
    }
    return screwStrips < nutStrips ? GivesWay.SCREW_THREAD_STRIPS : GivesWay.NUT_THREAD_STRIPS;
  }

  private static String shear(String part, Material material) {
    return String.format(
        Locale.ROOT,
        "%s: shear strength %.0f MPa, %s",
        part,
        material.threadShearMpa(),
        material.shearMpa().isPresent()
            ? "as given"
            : "half the tensile strength as FED-STD-H28 counts it");
  }

  private Worst worst(ThreadedJoint joint, List<String> notes) {
    ScrewThread thread = joint.thread();
    Optional<String> usual = classes.classes(thread).stream().findFirst();
    List<LimitsOfThread> usualLimits = usual.map(c -> classes.limits(thread, c)).orElse(List.of());
    List<LimitsOfThread> asked =
        joint.threadClass().map(c -> classes.limits(thread, c)).orElse(List.of());
    Optional<LimitsOfThread> screw = side(asked, ThreadSide.EXTERNAL, usualLimits);
    Optional<LimitsOfThread> nut = side(asked, ThreadSide.INTERNAL, usualLimits);
    notes.add(
        screw.isPresent() && nut.isPresent()
            ? "at the weakest sizes of "
                + nut.get().threadClass()
                + " and "
                + screw.get().threadClass()
            : "at basic sizes, since the series has no limits");
    return new Worst(
        mm(screw.flatMap(one -> one.major().least()), thread.major()),
        mm(screw.flatMap(one -> one.effective().least()), thread.effective()),
        mm(nut.flatMap(one -> one.effective().most()), thread.effective()),
        mm(joint.hole().or(() -> nut.flatMap(one -> one.minor().most())), thread.minorInternal()));
  }

  private static Optional<LimitsOfThread> side(
      List<LimitsOfThread> asked, ThreadSide side, List<LimitsOfThread> usual) {
    return java.util.stream.Stream.concat(asked.stream(), usual.stream())
        .filter(limits -> limits.side() == side)
        .findFirst();
  }

  private static double mm(Optional<Length> limit, Length basic) {
    return limit.orElse(basic).millimetres();
  }

  @Override
  public double torqueNm(ScrewThread thread, double preloadN, double friction) {
    checkPreload(preloadN);
    if (!(friction >= 0.02 && friction <= 0.6)) {
      throw new MeasureException("friction " + friction + " is outside 0.02 to 0.6");
    }
    double major = thread.major().millimetres();
    double pitch = thread.pitch().millimetres();
    // Mean of the major diameter and the core under the full depth of thread.
    double mean = major - thread.form().percentDepthPerPitch() * pitch;
    double lead = pitch / (Math.PI * mean);
    double flank = friction / Math.cos(Math.toRadians(thread.form().includedAngleDegrees() / 2));
    double ofThread = mean / 2 * (lead + flank) / (1 - flank * lead);
    return preloadN * (ofThread + 0.625 * friction * major) / 1000;
  }

  @Override
  public double torqueByNutFactorNm(ScrewThread thread, double preloadN, double nutFactor) {
    checkPreload(preloadN);
    if (!(nutFactor >= 0.05 && nutFactor <= 0.6)) {
      throw new MeasureException("nut factor " + nutFactor + " is outside 0.05 to 0.6");
    }
    return nutFactor * preloadN * thread.major().millimetres() / 1000;
  }

  private static void checkPreload(double preloadN) {
    if (!(preloadN > 0 && preloadN < 1e9)) {
      throw new MeasureException("preload " + preloadN + " N must be above 0 and below 1e9 N");
    }
  }
}
