package org.fettlebench.launcher;

/** When things start; features/README.md tells what stands at which level. */
final class StartLevels {
  /** What a club has dropped into the modules folder. */
  static final int MODULES = 20;

  /** Everything that a call on the command line needs. */
  static final int COMMAND = 20;

  /** Everything, the window included. */
  static final int DESKTOP = 40;

  private StartLevels() {}
}
