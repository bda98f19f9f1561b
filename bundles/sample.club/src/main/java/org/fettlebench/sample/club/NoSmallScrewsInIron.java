package org.fettlebench.sample.club;

import java.util.List;
import java.util.Locale;
import org.fettlebench.kits.Finding;
import org.fettlebench.kits.Finding.Figure;
import org.fettlebench.kits.Finding.Weight;
import org.fettlebench.kits.Joint;
import org.fettlebench.kits.JointCase;
import org.fettlebench.kits.JointRule;
import org.fettlebench.measure.Length;
import org.osgi.service.component.annotations.Component;

/** The sample club taps nothing finer than 8 BA into iron: too many taps were lost. */
@Component
public final class NoSmallScrewsInIron implements JointRule {
  // Major diameter of 8 BA; BS 93.
  static final Length LEAST_MAJOR = Length.ofMillimetres(2.2);

  @Override
  public String title() {
    return "club rule: no small screws in iron";
  }

  @Override
  public List<Finding> look(JointCase joint) {
    boolean small = joint.thread().major().compareTo(LEAST_MAJOR) < 0;
    if (!small || joint.joint().tapped().filter(NoSmallScrewsInIron::iron).isEmpty()) {
      return List.of();
    }
    return List.of(
        new Finding(
            Weight.CAUTION,
            title(),
            "club rule: " + joint.thread().designation() + " is finer than 8 BA in iron; ask first",
            List.of(
                new Figure("majorMm", joint.thread().major().millimetres()),
                new Figure("leastMajorMm", LEAST_MAJOR.millimetres())),
            "the sample club's own rule"));
  }

  private static boolean iron(Joint.TappedHole hole) {
    return hole.material().toLowerCase(Locale.ROOT).contains("iron");
  }
}
