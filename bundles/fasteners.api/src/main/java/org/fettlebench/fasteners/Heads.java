package org.fettlebench.fasteners;

import java.util.List;
import java.util.Optional;
import org.fettlebench.threads.ScrewThread;
import org.osgi.annotation.versioning.ProviderType;

/** The heads, nuts and washers of the tables that are enabled now. */
@ProviderType
public interface Heads {
  /** Returns the styles that any table has. */
  List<HeadStyle> styles();

  /** Finds the head of a style for a thread; absent when no table has it. */
  Optional<Head> find(String style, ScrewThread thread);

  /** Returns every head, nut and washer listed for a thread. */
  List<Head> forThread(ScrewThread thread);
}
