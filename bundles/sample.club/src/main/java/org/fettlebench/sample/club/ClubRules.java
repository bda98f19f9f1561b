package org.fettlebench.sample.club;

import java.util.List;
import java.util.Map;
import org.fettlebench.command.Call;
import org.fettlebench.command.Command;
import org.fettlebench.command.Reply;
import org.fettlebench.command.Usage;
import org.osgi.service.component.annotations.Component;

/** Tells the sample club's rules on the command line. */
@Component
public final class ClubRules implements Command {
  private static final List<String> RULES =
      List.of(
          "No screw finer than 8 BA into iron.",
          "Every tap goes back clean, or is told to be blunt.",
          "The last one out looks at the kettle.");

  @Override
  public Usage usage() {
    return Usage.of("club rules", "Tells the sample club's rules.", "club rules");
  }

  @Override
  public Reply run(Call call) {
    return Reply.done(String.join("\n", RULES), Map.of("rules", RULES));
  }
}
